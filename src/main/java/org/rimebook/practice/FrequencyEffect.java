package org.rimebook.practice;

/** Something that spoils a frequency on its way to the logger. */
@FunctionalInterface
public interface FrequencyEffect {

  /**
   * Changes what the logger takes down for one wire.
   *
   * @param around the season
   * @param wire index of the wire
   * @param frequencyHz frequency at each reading [Hz], NaN for none, changed in place
   */
  void apply(Surroundings around, int wire, double[] frequencyHz);
}
