package org.rimebook.findings;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.Robust;

/** What hours of the day have in common, over the dry days of a season. */
final class DailyHarmonic {

  private static final int HOURS = 24;
  private static final long HOUR_MS = 3_600_000;

  /** A day counts with so many hours known; own choice. */
  private static final int LEAST_HOURS = 20;

  /** A day is dry when the level stays within this [mm]; own choice. */
  private static final double DRY_MM = 1.5;

  /** The level of a dry day ends this near to where it began [mm]; own choice. */
  private static final double KEPT_MM = 0.4;

  private final SharedHours hours;
  private final List<int[]> days = new ArrayList<>();

  /** Finds the dry days. */
  DailyHarmonic(SharedHours hours, ZoneOffset offset) {
    this.hours = hours;
    int[] day = new int[HOURS];
    Arrays.fill(day, -1);
    long current = Long.MIN_VALUE;
    for (int hour = 0; hour < hours.size(); hour++) {
      long local = Math.floorDiv(hours.startMs(hour) + offset.getTotalSeconds() * 1000L, HOUR_MS);
      if (Math.floorDiv(local, (long) HOURS) != current) {
        close(day);
        current = Math.floorDiv(local, (long) HOURS);
      }
      if (hours.known(hour)) {
        day[Math.floorMod(local, HOURS)] = hour;
      }
    }
    close(day);
  }

  private void close(int[] day) {
    double[] level = Arrays.stream(day).filter(h -> h >= 0).mapToDouble(this::meanMm).toArray();
    if (level.length >= LEAST_HOURS) {
      double range = Arrays.stream(level).max().orElse(0) - Arrays.stream(level).min().orElse(0);
      double kept = Math.abs(level[level.length - 1] - level[0]);
      if (range < DRY_MM && kept < KEPT_MM) {
        days.add(day.clone());
      }
    }
    Arrays.fill(day, -1);
  }

  /** Mean of the wires' depths [mm]. */
  double meanMm(int hour) {
    double sum = 0;
    for (int wire = 0; wire < hours.wires(); wire++) {
      sum += hours.depthMm(wire, hour);
    }
    return sum / hours.wires();
  }

  /** Dry days. */
  int days() {
    return days.size();
  }

  /** A value of an hour. */
  interface ByHour {

    double at(int hour);
  }

  /**
   * Amplitude of the wave of one day's period in a quantity's medians by hour of the day, each day
   * about its own mean.
   */
  double amplitude(ByHour value) {
    double sine = 0;
    double cosine = 0;
    double[] means = days.stream().mapToDouble(day -> mean(day, value)).toArray();
    for (int clock = 0; clock < HOURS; clock++) {
      double[] about = new double[days.size()];
      int count = 0;
      for (int day = 0; day < about.length; day++) {
        int hour = days.get(day)[clock];
        if (hour >= 0 && Double.isFinite(value.at(hour)) && Double.isFinite(means[day])) {
          about[count++] = value.at(hour) - means[day];
        }
      }
      double usual = count == 0 ? 0 : Robust.medianInPlace(about, count);
      sine += usual * StrictMath.sin(2 * StrictMath.PI * clock / HOURS);
      cosine += usual * StrictMath.cos(2 * StrictMath.PI * clock / HOURS);
    }
    return StrictMath.hypot(sine, cosine) * 2 / HOURS;
  }

  private static double mean(int[] day, ByHour value) {
    return Arrays.stream(day)
        .filter(h -> h >= 0)
        .mapToDouble(value::at)
        .filter(Double::isFinite)
        .average()
        .orElse(Double.NaN);
  }
}
