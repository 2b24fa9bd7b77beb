package org.rimebook.practice.faults;

import java.util.Locale;
import org.rimebook.practice.bench.MarkedSeason;
import org.rimebook.practice.bench.Planter;
import org.rimebook.practice.bench.Scenario;
import org.rimebook.practice.bench.Variant;
import org.rimebook.practice.bench.Winter;

/** Classes of winters with faults nobody has marked. What a class leaves open is drawn by seed. */
public enum FaultClass {
  CALM(Scenario.CALM, "little wind, little sun, no fault"),
  WINDY(Scenario.WINDY, "mean wind 6 to 9 m/s, no fault"),
  DIURNAL(Scenario.DIURNAL, "wires move 0.05 to 0.4 mm in the sun"),
  EVAPORATION(Scenario.EVAPORATION, "0.05 to 0.5 mm/d evaporate"),
  DEAD_WIRE(Scenario.DEAD_WIRE, "a wire jumps about, then is silent for weeks"),
  DRIFTING_WIRE(Scenario.DRIFTING_WIRE, "a wire creeps for weeks"),
  GAPS(Scenario.GAPS, "power failures of minutes to days, readings lost"),
  VISITS(Scenario.VISITS, "the bucket is emptied, charged, inspected"),
  CAPPING(Scenario.CAPPING, "snow bridges the orifice and slides in later"),
  COARSE(Scenario.COARSE, "readings every 10 to 60 min, no fault"),
  QUANTISED(Scenario.QUANTISED, "a counter of 0.1 to 1 Hz, no fault"),
  DRIZZLE(Scenario.DRIZZLE, "mostly drizzle and traces, no fault"),
  INTENSE(Scenario.INTENSE, "bursts up to 60 mm/h, no fault"),
  SNOW_SENSOR(
      Scenario.CALM, "snow depth and humidity are measured, no fault", LevelFaults::snowSensor),
  CAPPED(
      Scenario.CALM,
      "snow bridges the orifice until warmth, sun or wind; snow depth is measured",
      LevelFaults::caps),
  ICED(Scenario.CALM, "the inlet is iced shut for days; snow depth is measured", LevelFaults::iced),
  OVERFLOWING(Scenario.CALM, "the bucket runs full", LevelFaults::overflow),
  NEARLY_FULL(Scenario.CALM, "the bucket is nearly full at the end", LevelFaults::nearlyFull),
  LEAKING(Scenario.CALM, "0.3 to 3 mm/d leak for days to weeks", LevelFaults::leak),
  FROZEN_BUCKET(
      Scenario.CALM, "the bucket freezes, wires no longer feel the wind", LevelFaults::frozen),
  EVERYTHING(Scenario.EVERYTHING, "wind, sun, evaporation, a coarse counter and all mishaps");

  private final Scenario scenario;
  private final String words;
  private final Planter planter;

  FaultClass(Scenario scenario, String words) {
    this(scenario, words, Planter.NONE);
  }

  FaultClass(Scenario scenario, String words, Planter planter) {
    this.scenario = scenario;
    this.words = words;
    this.planter = planter;
  }

  /** The name in tables and on the command line. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What goes wrong, in words. */
  public String words() {
    return words;
  }

  /**
   * A winter of the class.
   *
   * @param seed seed; any number
   * @param days length [d]
   */
  public MarkedSeason winter(long seed, int days) {
    return new Winter(scenario, Variant.PLAIN, seed, days).season(planter);
  }
}
