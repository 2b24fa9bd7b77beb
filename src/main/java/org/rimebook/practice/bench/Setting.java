package org.rimebook.practice.bench;

import java.time.Duration;
import java.util.List;
import java.util.Set;

/**
 * What a class of winters fixes; a winter draws from it.
 *
 * @param windMs mean wind speed [m/s]
 * @param sunMm how far wires move in the sun [mm]
 * @param evaporationMmPerDay evaporation on a mean mild day [mm/d]
 * @param steps sampling intervals, taken in turn by seed
 * @param counterHz smallest steps of frequency, taken in turn by seed [Hz]
 * @param precipitating what mostly falls
 * @param mishaps what goes wrong
 */
record Setting(
    Range windMs,
    Range sunMm,
    Range evaporationMmPerDay,
    List<Duration> steps,
    List<Double> counterHz,
    Precipitating precipitating,
    Set<Mishap> mishaps) {

  /** A calm winter at which nothing goes wrong. */
  static final Setting CALM =
      new Setting(
          new Range(1, 2),
          new Range(0, 0.05),
          new Range(0, 0),
          List.of(
              Duration.ofMinutes(1),
              Duration.ofMinutes(1),
              Duration.ofMinutes(2),
              Duration.ofMinutes(5),
              Duration.ofSeconds(30)),
          List.of(0.01),
          Precipitating.ALL_SORTS,
          Set.of());

  Setting {
    steps = List.copyOf(steps);
    counterHz = List.copyOf(counterHz);
    mishaps = Set.copyOf(mishaps);
  }

  /** What mostly falls. */
  enum Precipitating {
    ALL_SORTS,
    DRIZZLE,
    INTENSE
  }

  /** What goes wrong, with an entry for all but gaps, which speak for themselves. */
  enum Mishap {
    DEAD_WIRE,
    DRIFTING_WIRE,
    GAPS,
    VISITS,
    CAPPING
  }

  /**
   * Values to draw from.
   *
   * @param low least
   * @param high largest
   */
  record Range(double low, double high) {}

  Setting wind(Range ms) {
    return new Setting(ms, sunMm, evaporationMmPerDay, steps, counterHz, precipitating, mishaps);
  }

  Setting sun(Range mm) {
    return new Setting(windMs, mm, evaporationMmPerDay, steps, counterHz, precipitating, mishaps);
  }

  Setting evaporation(Range mmPerDay) {
    return new Setting(windMs, sunMm, mmPerDay, steps, counterHz, precipitating, mishaps);
  }

  Setting steps(Duration... every) {
    return new Setting(
        windMs, sunMm, evaporationMmPerDay, List.of(every), counterHz, precipitating, mishaps);
  }

  Setting counterHz(Double... stepsHz) {
    return new Setting(
        windMs, sunMm, evaporationMmPerDay, steps, List.of(stepsHz), precipitating, mishaps);
  }

  Setting precipitating(Precipitating what) {
    return new Setting(windMs, sunMm, evaporationMmPerDay, steps, counterHz, what, mishaps);
  }

  Setting mishaps(Mishap... what) {
    return new Setting(
        windMs, sunMm, evaporationMmPerDay, steps, counterHz, precipitating, Set.of(what));
  }
}
