package org.rimebook.practice;

import java.util.BitSet;
import java.util.List;
import org.rimebook.station.StationSheet;

/** A season as the logger saw it, with the truth beside it. */
public final class SimulatedSeason {

  private final Surroundings around;
  private final Truth truth;
  private final List<double[]> frequencyHz;
  private final Channels channels;
  private final BitSet logged;

  SimulatedSeason(
      Surroundings around,
      Truth truth,
      List<double[]> frequencyHz,
      Channels channels,
      BitSet logged) {
    this.around = around;
    this.truth = truth;
    this.frequencyHz = List.copyOf(frequencyHz);
    this.channels = channels;
    this.logged = (BitSet) logged.clone();
  }

  /** The station sheet. */
  public StationSheet sheet() {
    return around.sheet();
  }

  /** The readings. */
  public Sampling sampling() {
    return around.sampling();
  }

  /** What the season was drawn from. */
  public long seed() {
    return around.seed();
  }

  /** What really happened. */
  public Truth truth() {
    return truth;
  }

  /** Whether the logger took the reading down. */
  public boolean logged(int index) {
    return logged.get(index);
  }

  /** Frequency of a wire [Hz]; NaN when there is none. */
  public double frequencyHz(int wire, int index) {
    return frequencyHz.get(wire)[index];
  }

  /** Value of a channel in the unit inside; NaN when there is none. */
  public double channelValue(String quantity, int index) {
    return channels.value(quantity, index);
  }
}
