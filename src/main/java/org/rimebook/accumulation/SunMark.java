package org.rimebook.accumulation;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * The mark the sun leaves on the wires: the mean departure of each wire from the mean of all by
 * hour of the day, over days on which nothing fell. The departure an hour has is that of its
 * readings less that of the day's 24 hours, so that a steady difference between wires doesn't
 * count. The wire on the north side should show least of it (common practice).
 *
 * <p>A day is one of station time, from midnight to midnight, with readings of all wires in each
 * hour, no catch, and no service visit.
 */
public final class SunMark {

  /** Hours of a day. */
  public static final int HOURS = 24;

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = HOURS * HOUR_MS;

  private final List<Interval> days;
  private final double[][] sumMm;
  private final double[][] sumSquareMm2;

  private SunMark(int wires) {
    this.days = new ArrayList<>();
    this.sumMm = new double[wires][HOURS];
    this.sumSquareMm2 = new double[wires][HOURS];
  }

  /**
   * The mark in a stretch of time.
   *
   * @param within days that lie in it wholly count
   * @param record the readings
   * @param offset of station time
   * @param depths depth by wire and row; readings not used don't count
   * @param series the catch
   */
  public static SunMark of(
      Interval within,
      SeasonRecord record,
      ZoneOffset offset,
      WireDepths depths,
      CatchSeries series) {
    SunMark mark = new SunMark(depths.wires());
    long offsetMs = offset.getTotalSeconds() * 1000L;
    long first = -Math.floorDiv(-(within.fromMs() + offsetMs), DAY_MS) * DAY_MS - offsetMs;
    DayHours hours = new DayHours(record, depths);
    LongStream.iterate(first, start -> start + DAY_MS <= within.toMs(), start -> start + DAY_MS)
        .mapToObj(start -> new Interval(start, start + DAY_MS))
        .filter(day -> isDry(series, day) && hours.fill(day))
        .forEach(day -> mark.add(day, hours));
    return mark;
  }

  private static boolean isDry(CatchSeries series, Interval day) {
    if (day.fromMs() < series.fromMs(0) || day.toMs() > series.toMs(series.size() - 1)) {
      return false;
    }
    int piece = series.pieceAt(day.fromMs());
    while (piece < series.size() && series.fromMs(piece) < day.toMs()) {
      switch (series.kind(piece)) {
        case DRY_STEP, DRY_SPELL, GAP_STILL -> piece++;
        default -> {
          return false;
        }
      }
    }
    return true;
  }

  private void add(Interval day, DayHours hours) {
    days.add(day);
    for (int wire = 0; wire < sumMm.length; wire++) {
      for (int hour = 0; hour < HOURS; hour++) {
        double departureMm = hours.departureMm(wire, hour);
        sumMm[wire][hour] += departureMm;
        sumSquareMm2[wire][hour] += departureMm * departureMm;
      }
    }
  }

  /** The days behind it, in order. */
  public List<Interval> days() {
    return List.copyOf(days);
  }

  /** An hour of the day, 0 to 23, on each of the days behind it. */
  public List<Interval> hourOfDays(int hour) {
    return days.stream()
        .map(day -> day.fromMs() + hour * HOUR_MS)
        .map(fromMs -> new Interval(fromMs, fromMs + HOUR_MS))
        .toList();
  }

  /** Wires. */
  public int wires() {
    return sumMm.length;
  }

  /** Mean departure of a wire [mm] in an hour of the day, 0 to 23; NaN without days. */
  public double meanMm(int wire, int hour) {
    return sumMm[wire][hour] / days.size();
  }

  /** Standard error of that mean [mm], by how days differ; empty with fewer than two days. */
  public OptionalDouble standardErrorMm(int wire, int hour) {
    int count = days.size();
    if (count < 2) {
      return OptionalDouble.empty();
    }
    double mean = meanMm(wire, hour);
    double variance = (sumSquareMm2[wire][hour] - count * mean * mean) / (count - 1);
    return OptionalDouble.of(Math.sqrt(Math.max(0, variance) / count));
  }

  /** How far a wire's means lie apart over the day, from least to most [mm]; NaN without days. */
  public double rangeMm(int wire) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int hour = 0; hour < HOURS; hour++) {
      least = Math.min(least, meanMm(wire, hour));
      most = Math.max(most, meanMm(wire, hour));
    }
    return most - least;
  }

  /** Departures by hour of one day. */
  private static final class DayHours {
    private final SeasonRecord record;
    private final WireDepths depths;
    private final double[][] departureMm;
    private final int[] readings = new int[HOURS];

    DayHours(SeasonRecord record, WireDepths depths) {
      this.record = record;
      this.depths = depths;
      this.departureMm = new double[depths.wires()][HOURS];
    }

    /** Takes up a day; false when an hour has no reading of all wires. */
    boolean fill(Interval day) {
      clear();
      int end = record.firstRowAtOrAfter(day.toMs());
      for (int row = record.firstRowAtOrAfter(day.fromMs()); row < end; row++) {
        if (allUsed(row)) {
          take(row, (int) ((record.stampMs(row) - day.fromMs()) / HOUR_MS));
        }
      }
      for (int count : readings) {
        if (count == 0) {
          return false;
        }
      }
      for (double[] wire : departureMm) {
        centre(wire);
      }
      return true;
    }

    double departureMm(int wire, int hour) {
      return departureMm[wire][hour];
    }

    private void clear() {
      Arrays.fill(readings, 0);
      for (double[] wire : departureMm) {
        Arrays.fill(wire, 0);
      }
    }

    private boolean allUsed(int row) {
      for (int wire = 0; wire < departureMm.length; wire++) {
        if (!depths.used(wire, row)) {
          return false;
        }
      }
      return true;
    }

    private void take(int row, int hour) {
      double mean = 0;
      for (int wire = 0; wire < departureMm.length; wire++) {
        mean += depths.depthMm(wire, row) / departureMm.length;
      }
      for (int wire = 0; wire < departureMm.length; wire++) {
        departureMm[wire][hour] += depths.depthMm(wire, row) - mean;
      }
      readings[hour]++;
    }

    private void centre(double[] wire) {
      double mean = 0;
      for (int hour = 0; hour < HOURS; hour++) {
        wire[hour] /= readings[hour];
        mean += wire[hour] / HOURS;
      }
      for (int hour = 0; hour < HOURS; hour++) {
        wire[hour] -= mean;
      }
    }
  }
}
