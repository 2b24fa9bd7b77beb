package org.rimebook.practice.bench;

import java.time.Duration;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.rimebook.practice.bench.Setting.Mishap;
import org.rimebook.practice.bench.Setting.Precipitating;
import org.rimebook.practice.bench.Setting.Range;

/** The classes of winters. What a class leaves open is drawn from the seed. */
public enum Scenario {
  CALM("little wind, little sun", s -> s),
  WINDY("mean wind 6 to 9 m/s", s -> s.wind(new Range(6, 9))),
  DIURNAL("wires move 0.05 to 0.4 mm in the sun", s -> s.sun(new Range(0.05, 0.4))),
  EVAPORATION(
      "0.05 to 0.5 mm/d evaporate, on odd seeds while it falls too",
      s -> s.evaporation(new Range(0.05, 0.5))),
  DEAD_WIRE("a wire dies for weeks; marked", s -> s.mishaps(Mishap.DEAD_WIRE)),
  DRIFTING_WIRE("a wire creeps for weeks; marked", s -> s.mishaps(Mishap.DRIFTING_WIRE)),
  GAPS("power failures of minutes to days, readings lost", s -> s.mishaps(Mishap.GAPS)),
  VISITS("the bucket is emptied, charged, inspected; marked", s -> s.mishaps(Mishap.VISITS)),
  CAPPING("snow bridges the orifice and slides in later; marked", s -> s.mishaps(Mishap.CAPPING)),
  COARSE(
      "readings every 10 to 60 min",
      s -> s.steps(minutes(30), minutes(15), minutes(60), minutes(20), minutes(10))),
  QUANTISED("a counter of 0.1 to 1 Hz", s -> s.counterHz(0.2, 0.1, 0.5, 1.0, 0.1)),
  DRIZZLE("mostly drizzle and traces", s -> s.precipitating(Precipitating.DRIZZLE)),
  INTENSE(
      "bursts up to 60 mm/h; every third season two months, read every 10 s",
      s ->
          s.precipitating(Precipitating.INTENSE)
              .steps(Duration.ofSeconds(10), minutes(1), minutes(2))),
  EVERYTHING(
      "wind, sun, evaporation, a coarse counter and all mishaps at once",
      s ->
          s.wind(new Range(3, 6))
              .sun(new Range(0.05, 0.3))
              .evaporation(new Range(0.05, 0.3))
              .counterHz(0.1, 0.05, 0.2, 0.1, 0.5)
              .mishaps(Mishap.values()));

  private final String words;
  private final Setting setting;

  Scenario(String words, UnaryOperator<Setting> change) {
    this.words = words;
    this.setting = change.apply(Setting.CALM);
  }

  private static Duration minutes(long minutes) {
    return Duration.ofMinutes(minutes);
  }

  /** The name in tables and on the command line. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it is, in words. */
  public String words() {
    return words;
  }

  /** What it fixes. */
  Setting setting() {
    return setting;
  }
}
