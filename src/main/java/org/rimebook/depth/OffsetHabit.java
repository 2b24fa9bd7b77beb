package org.rimebook.depth;

import java.util.Arrays;

/**
 * How each wire's offset from the mean of the others usually moves over six hours: what sun,
 * temperature and wind do to a sound gauge. Taken from the first complete row of each hour.
 *
 * <p>On a gauge with three wires, tilt that keeps to one direction, as the sun's does, moves the
 * offset of one wire in step with the difference of the other two. Where the two are closely enough
 * related, the difference tells the tilt while the wire is away.
 */
final class OffsetHabit {

  private static final long HOUR_MS = 3_600_000;

  /** A quarter of a day, over which sun and temperature move most; own choice. */
  private static final int LAG_HOURS = 6;

  /** Fewer changes than a day's worth say nothing about what is usual. */
  private static final int LEAST_CHANGES = 24;

  /** Standard deviations beyond which a change isn't usual; own choice. */
  private static final double UNUSUAL_SD = 8;

  /** Least share of variance that makes a relation; own choice. */
  private static final double LEAST_R_SQUARED = 0.5;

  /**
   * A steeper relation isn't used: at 2.5 the noise of the level is twice that of the mean of the
   * two wires left. Own choice.
   */
  private static final double STEEPEST = 2.5;

  private final UsableRows rows;
  private final double[][] depthMm;
  private final int[] earlier;
  private final int[] later;

  /**
   * @param depthMm depth [mm] by wire and index
   */
  OffsetHabit(UsableRows rows, double[][] depthMm) {
    this.rows = rows;
    this.depthMm = depthMm;
    int[] hourly = hourly();
    int[] from = new int[hourly.length];
    int[] to = new int[hourly.length];
    int size = 0;
    int at = 0;
    for (int next : hourly) {
      while (hour(hourly[at]) < hour(next) - LAG_HOURS) {
        at++;
      }
      if (hour(hourly[at]) == hour(next) - LAG_HOURS && comparable(hourly[at], next)) {
        from[size] = hourly[at];
        to[size++] = next;
      }
    }
    this.earlier = Arrays.copyOf(from, size);
    this.later = Arrays.copyOf(to, size);
  }

  /** Complete rows, the first of each hour. */
  private int[] hourly() {
    int all = 0;
    for (int mask : rows.wireMasks()) {
      all |= mask;
    }
    int[] found = new int[rows.size()];
    int size = 0;
    long lastHour = Long.MIN_VALUE;
    for (int i = 0; i < rows.size(); i++) {
      if (rows.wireMasks()[i] == all && hour(i) != lastHour) {
        found[size++] = i;
        lastHour = hour(i);
      }
    }
    return Arrays.copyOf(found, size);
  }

  private long hour(int index) {
    return Math.floorDiv(rows.stampMs(index), HOUR_MS);
  }

  private boolean comparable(int one, int other) {
    boolean same = rows.segments()[one] == rows.segments()[other];
    for (int wire = 0; wire < depthMm.length; wire++) {
      same &= rows.calibration(wire, one) == rows.calibration(wire, other);
    }
    return same;
  }

  /** What to expect of a wire. */
  WireHabit of(int wire) {
    double[] offset = new double[later.length];
    double[] difference = new double[later.length];
    for (int i = 0; i < later.length; i++) {
      offset[i] = offsetMm(wire, later[i]) - offsetMm(wire, earlier[i]);
      difference[i] = differenceMm(wire, later[i]) - differenceMm(wire, earlier[i]);
    }
    double slope = slope(offset, difference);
    double offsetChangeMm = usualSize(offset);
    for (int i = 0; i < later.length; i++) {
      offset[i] -= slope * difference[i];
    }
    return new WireHabit(slope, offsetChangeMm, usualSize(offset));
  }

  /**
   * What to expect of a wire.
   *
   * @param tiltSlope change of its offset by change of {@link #differenceMm}; 0 when unrelated
   * @param offsetChangeMm standard deviation of the changes of offset [mm]; 0 when there are too
   *     few to tell
   * @param residualChangeMm what is left of it when the relation is made use of [mm]
   */
  record WireHabit(double tiltSlope, double offsetChangeMm, double residualChangeMm) {

    /** Change of offset to expect [mm] when so many other wires are there. */
    double usualChangeMm(int others) {
      return others < 2 ? offsetChangeMm : residualChangeMm;
    }
  }

  private static double usualSize(double[] changes) {
    if (changes.length < LEAST_CHANGES) {
      return 0;
    }
    double[] sizes = Arrays.stream(changes).map(Math::abs).toArray();
    return Robust.SD_PER_MAD * Robust.medianInPlace(sizes, sizes.length);
  }

  /** Least-squares slope through zero over the usual changes; 0 unless it explains most of them. */
  private static double slope(double[] offset, double[] difference) {
    double offsetLimit = UNUSUAL_SD * usualSize(offset);
    double differenceLimit = UNUSUAL_SD * usualSize(difference);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < offset.length; i++) {
      if (Math.abs(offset[i]) < offsetLimit && Math.abs(difference[i]) < differenceLimit) {
        xx += difference[i] * difference[i];
        xy += difference[i] * offset[i];
        yy += offset[i] * offset[i];
      }
    }
    boolean related = xy * xy > LEAST_R_SQUARED * xx * yy && Math.abs(xy) <= STEEPEST * xx;
    return related ? xy / xx : 0;
  }

  private double offsetMm(int wire, int index) {
    double others = 0;
    for (int other = 0; other < depthMm.length; other++) {
      if (other != wire && rows.used(other, index)) {
        others += depthMm[other][index];
      }
    }
    int count = Integer.bitCount(rows.wireMasks()[index] & ~(1 << wire));
    return count == 0 ? 0 : depthMm[wire][index] - others / count;
  }

  /** Difference of the two other wires [mm] of a gauge with three, all present; else 0. */
  private double differenceMm(int wire, int index) {
    boolean three = depthMm.length == 3 && Integer.bitCount(rows.wireMasks()[index]) == 3;
    return three ? differenceMm(depthMm, wire, index) : 0;
  }

  /** Difference of the two other wires [mm] of a gauge with three. */
  static double differenceMm(double[][] depthMm, int wire, int index) {
    return depthMm[wire == 0 ? 1 : 0][index] - depthMm[wire == 2 ? 1 : 2][index];
  }
}
