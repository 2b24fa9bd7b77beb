package org.rimebook.depth;

import java.util.Arrays;

/**
 * By how much each wire's offset from the mean of the others usually changes over six hours: what
 * sun, temperature and wind do to a sound gauge. Taken from the first complete row of each hour.
 */
final class OffsetSpread {

  private static final long HOUR_MS = 3_600_000;
  private static final int LAG_HOURS = 6;

  /** Fewer changes than a day's worth say nothing about what is usual. */
  private static final int LEAST_CHANGES = 24;

  private final UsableRows rows;
  private final double[][] depthMm;
  private int[] hourly;

  /**
   * @param depthMm depth [mm] by wire and index
   */
  OffsetSpread(UsableRows rows, double[][] depthMm) {
    this.rows = rows;
    this.depthMm = depthMm;
    this.hourly = hourly();
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
      long hour = Math.floorDiv(rows.stampMs(i), HOUR_MS);
      if (hour != lastHour && rows.wireMasks()[i] == all) {
        found[size++] = i;
        lastHour = hour;
      }
    }
    return Arrays.copyOf(found, size);
  }

  /** Usual change of a wire's offset [mm], as a standard deviation; 0 when there is too little. */
  double usualChangeMm(int wire) {
    double[] changes = new double[hourly.length];
    int size = 0;
    int earlier = 0;
    for (int later = 0; later < hourly.length; later++) {
      while (hour(hourly[earlier]) < hour(hourly[later]) - LAG_HOURS) {
        earlier++;
      }
      if (hour(hourly[earlier]) == hour(hourly[later]) - LAG_HOURS
          && comparable(hourly[earlier], hourly[later])) {
        changes[size++] = Math.abs(offsetMm(wire, hourly[later]) - offsetMm(wire, hourly[earlier]));
      }
    }
    return size < LEAST_CHANGES ? 0 : Robust.SD_PER_MAD * Robust.medianInPlace(changes, size);
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
}
