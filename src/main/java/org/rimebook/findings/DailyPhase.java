package org.rimebook.findings;

import java.time.ZoneOffset;
import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.station.Interval;

/**
 * When in the day a channel is highest, day by day: the phase of its first harmonic after taking
 * off the change from one midnight to the next. The harmonic of what the sun drives is symmetric
 * about noon whatever the length of the day, so growing days don't move it.
 */
final class DailyPhase {

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final int HOURS = 24;

  /** Days that tell on each side of a step at most, and at least; own choice. */
  private static final int MOST_DAYS = 21;

  private static final int FEWEST_DAYS = 8;

  /** Standard error of a median of normal values over that of their mean. */
  private static final double MEDIAN_ERROR = 1.2533;

  private final double[] phaseH;
  private final long firstDayMs;

  private DailyPhase(double[] phaseH, long firstDayMs) {
    this.phaseH = phaseH;
    this.firstDayMs = firstDayMs;
  }

  /**
   * The phases of a channel.
   *
   * @param quantity a channel constant
   * @param least smallest half swing of a day that tells, in the channel's unit
   */
  static DailyPhase of(Scene scene, String quantity, double least) {
    Blocks blocks = scene.blocks();
    double[] values = blocks.channel(quantity);
    ZoneOffset offset = scene.sheet().utcOffset();
    long offsetMs = offset.getTotalSeconds() * 1000L;
    long first = Math.floorDiv(blocks.startMs(0) + offsetMs, DAY_MS) * DAY_MS - offsetMs;
    int days = (int) ((blocks.startMs(blocks.size()) - first) / DAY_MS);
    double[] phases = new double[values.length == 0 ? 0 : Math.max(0, days)];
    for (int day = 0; day < phases.length; day++) {
      phases[day] = phase(hourly(blocks, values, first + day * DAY_MS), least);
    }
    return new DailyPhase(phases, first);
  }

  /** Means of 25 hours from midnight on. */
  private static double[] hourly(Blocks blocks, double[] values, long dayMs) {
    double[] sums = new double[HOURS + 1];
    int[] counts = new int[HOURS + 1];
    int block = blocks.at(dayMs);
    while (block < values.length && blocks.startMs(block) < dayMs + DAY_MS + HOUR_MS) {
      long middle = blocks.startMs(block) + blocks.lengthMs() / 2 - dayMs;
      if (middle >= 0 && middle < DAY_MS + HOUR_MS && !Double.isNaN(values[block])) {
        sums[(int) (middle / HOUR_MS)] += values[block];
        counts[(int) (middle / HOUR_MS)]++;
      }
      block++;
    }
    Arrays.setAll(sums, hour -> counts[hour] == 0 ? Double.NaN : sums[hour] / counts[hour]);
    return sums;
  }

  private static double phase(double[] hourly, double least) {
    double trend = (hourly[HOURS] - hourly[0]) / HOURS;
    double cosine = 0;
    double sine = 0;
    for (int hour = 0; hour < HOURS; hour++) {
      double angle = 2 * StrictMath.PI * (hour + 0.5) / HOURS;
      double value = hourly[hour] - trend * hour;
      cosine += value * StrictMath.cos(angle);
      sine += value * StrictMath.sin(angle);
    }
    double swing = 2 * StrictMath.sqrt(cosine * cosine + sine * sine) / HOURS;
    if (!(swing >= least)) {
      return Double.NaN;
    }
    double hour = StrictMath.atan2(sine, cosine) * HOURS / (2 * StrictMath.PI);
    return hour < 0 ? hour + HOURS : hour;
  }

  /**
   * An hour of the day, with its standard error.
   *
   * @param hour by the record's clock [h]; NaN when too few days tell
   * @param errorH standard error [h]
   */
  record Noon(double hour, double errorH) {

    boolean known() {
      return !Double.isNaN(hour);
    }
  }

  /** Over the last days before an instant. */
  Noon before(long epochMs) {
    return noon(new Interval(epochMs - MOST_DAYS * DAY_MS, epochMs));
  }

  /** Over the first days after an instant. */
  Noon after(long epochMs) {
    return noon(new Interval(epochMs, epochMs + MOST_DAYS * DAY_MS));
  }

  /** Over whole days of a span. */
  Noon noon(Interval span) {
    double[] phases = new double[phaseH.length];
    int count = 0;
    for (int day = 0; day < phaseH.length; day++) {
      long from = firstDayMs + day * DAY_MS;
      boolean inside = from >= span.fromMs() && from + DAY_MS + HOUR_MS <= span.toMs();
      if (inside && !Double.isNaN(phaseH[day])) {
        phases[count++] = phaseH[day];
      }
    }
    if (count < FEWEST_DAYS) {
      return new Noon(Double.NaN, Double.NaN);
    }
    // Noon may lie near midnight by a clock of another part of the world.
    double about = circularMean(phases, count);
    for (int i = 0; i < count; i++) {
      phases[i] -= HOURS * StrictMath.rint((phases[i] - about) / HOURS);
    }
    double hour = Robust.medianInPlace(phases, count);
    double sd = Robust.sdInPlace(phases, count);
    return new Noon(hour, MEDIAN_ERROR * sd / StrictMath.sqrt(count));
  }

  private static double circularMean(double[] hours, int count) {
    double cosine = 0;
    double sine = 0;
    for (int i = 0; i < count; i++) {
      cosine += StrictMath.cos(2 * StrictMath.PI * hours[i] / HOURS);
      sine += StrictMath.sin(2 * StrictMath.PI * hours[i] / HOURS);
    }
    return StrictMath.atan2(sine, cosine) * HOURS / (2 * StrictMath.PI);
  }
}
