package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.Robust;
import org.rimebook.station.Interval;

/**
 * How the level changes in dry days that start at any step, the same time of day compared with
 * itself so that the daily wave drops out.
 *
 * @param changes one for each dry day, in the order of time
 * @param perDay days that start within a day, by which they overlap
 */
record DryFall(List<Day> changes, double perDay) {

  /** Standard error of a median against that of a mean. */
  private static final double MEDIAN_ERROR = 1.2533;

  /**
   * A dry day.
   *
   * @param from first step
   * @param mm what the level gained [mm]
   * @param airDegC mean air temperature; NaN when it isn't known
   */
  record Day(int from, double mm, double airDegC) {}

  /**
   * A rate with its uncertainty.
   *
   * @param mmPerDay median change [mm/d]
   * @param sdMmPerDay standard uncertainty [mm/d]
   * @param days days that don't overlap, about
   */
  record Rate(double mmPerDay, double sdMmPerDay, double days) {}

  DryFall {
    changes = List.copyOf(changes);
  }

  /** The days that don't start within any of some spans of time. */
  DryFall without(List<Interval> spans, HourlyLevel level) {
    return new DryFall(
        changes.stream()
            .filter(day -> spans.stream().noneMatch(s -> s.contains(level.startMs(day.from()))))
            .toList(),
        perDay);
  }

  /** Days within a range of temperature; those without are in every range. */
  Rate rate(double fromDegC, double toDegC) {
    double[] values =
        changes.stream()
            .filter(day -> !(day.airDegC() < fromDegC || day.airDegC() >= toDegC))
            .mapToDouble(Day::mm)
            .toArray();
    if (values.length == 0) {
      return new Rate(Double.NaN, Double.NaN, 0);
    }
    double days = values.length / perDay;
    double median = Robust.medianInPlace(values, values.length);
    double sd = Robust.sdInPlace(values, values.length);
    return new Rate(median, MEDIAN_ERROR * sd / Math.sqrt(Math.max(1, days)), days);
  }

  /** Standard deviation of the changes [mm/d]; NaN when there are none. */
  double sdMmPerDay() {
    double[] values = changes.stream().mapToDouble(Day::mm).toArray();
    return values.length == 0
        ? Double.NaN
        : Robust.sdInPlace(Arrays.copyOf(values, values.length), values.length);
  }

  /** The dry days of a level; each starts some steps after the last. */
  static DryFall of(HourlyLevel level, int every) {
    int day = level.stepsPerDay();
    List<Day> days = new ArrayList<>();
    for (int step = 0; step + day < level.size(); step += every) {
      double change =
          level.wet(step, step + day + 1) ? Double.NaN : level.changeMm(step, step + day);
      if (Double.isFinite(change)) {
        days.add(new Day(step, change, level.airDegC(step, step + day)));
      }
    }
    return new DryFall(days, (double) day / every);
  }
}
