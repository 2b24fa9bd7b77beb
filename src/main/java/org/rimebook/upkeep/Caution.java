package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.station.Gauge;

/** What can hurt those who look after a gauge, in plain words. Common practice. */
public final class Caution {

  /** What a person should lift alone at most, by common practice [kg]; local rules decide. */
  private static final double HEAVY_KG = 20;

  private Caution() {}

  /** Pouring, mixing and emptying. */
  public static List<String> charge(Antifreeze antifreeze) {
    return List.of(
        "Antifreeze: " + antifreeze.words() + ". " + antifreeze.hazard(),
        "Read the data sheets of antifreeze and oil first. Wear gloves and eye protection, keep"
            + " flames and sparks away, pour where there is air.",
        "Nothing goes on the ground or into a drain: collect what is emptied, label it, and"
            + " dispose of it under local rules.");
  }

  /**
   * Lifting the bucket.
   *
   * @param depthMm what stands in it [mm]
   * @param gauge the gauge
   */
  public static List<String> lifting(double depthMm, Gauge gauge) {
    double kg = Water.massKg(Math.max(0, depthMm), gauge.orificeAreaCm2());
    List<String> words = new ArrayList<>();
    words.add(
        text(
            "What is in the bucket weighs about %.1f kg, the bucket not counted. Pump or bail it"
                + " down before lifting; lift with two, from the legs, on firm ground.",
            kg));
    if (kg > HEAVY_KG) {
      words.add("That is more than one person should lift; local rules decide.");
    }
    words.add("Never stand under a bucket that hangs, and keep hands off wires under load.");
    return words;
  }

  /** Putting check weights on. */
  public static List<String> weights() {
    return List.of(
        "Check weights: lower each by hand, one at a time, and take it off the same way; keep feet"
            + " and fingers from under it, hands off wires under load, and eyes away from a wire"
            + " that could part.");
  }

  /** Getting there, and electricity. */
  public static List<String> site() {
    return List.of(
        "Winter: don't go alone, leave word of the way and the hour of return, look at weather and"
            + " avalanche bulletins, and turn back in time.",
        "Supply and lightning: switch off and disconnect before touching leads, stay away while"
            + " thunder is heard; wiring and earthing are for those licensed for it, under local"
            + " codes.");
  }
}
