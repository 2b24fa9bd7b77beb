package org.rimebook.totals.neighbour;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;

/** Daily catches made by hand; day 0 starts at 2024-11-01T07:00Z. */
final class Days {

  static final long DAY_MS = 86_400_000;
  static final long START_MS = 1_730_444_400_000L;

  private Days() {}

  static Interval span(int from, int to) {
    return new Interval(START_MS + from * DAY_MS, START_MS + to * DAY_MS);
  }

  static DayCatch day(int day, double mm) {
    return caught(day, day + 1, mm);
  }

  static DayCatch caught(int from, int to, double mm) {
    return new DayCatch(span(from, to), OptionalDouble.of(mm), Quality.GOOD);
  }

  static DayCatch missing(int day) {
    return new DayCatch(span(day, day + 1), OptionalDouble.empty(), Quality.MISSING);
  }

  static DayCatch of(int day, double mm, Quality quality) {
    return new DayCatch(span(day, day + 1), OptionalDouble.of(mm), quality);
  }

  static List<DayCatch> list(int count, IntToDoubleFunction mm) {
    List<DayCatch> days = new ArrayList<>();
    for (int day = 0; day < count; day++) {
      days.add(day(day, mm.applyAsDouble(day)));
    }
    return days;
  }
}
