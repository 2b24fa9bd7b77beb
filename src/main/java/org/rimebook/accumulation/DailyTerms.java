package org.rimebook.accumulation;

/** A daily wave of UTC as a constant and the cosine and sine of one and of two waves a day. */
final class DailyTerms {

  private static final int WAVES = 2;

  /** Number of terms. */
  static final int COUNT = 1 + 2 * WAVES;

  private static final long DAY_MS = 24 * 3_600_000;

  private DailyTerms() {}

  /** Adds the terms at an instant to the elements of an array from an index on. */
  static void addTo(double[] into, int at, long epochMs) {
    double day = 2 * Math.PI * Math.floorMod(epochMs, DAY_MS) / DAY_MS;
    into[at] += 1;
    for (int w = 1; w <= WAVES; w++) {
      into[at + 2 * w - 1] += StrictMath.cos(w * day);
      into[at + 2 * w] += StrictMath.sin(w * day);
    }
  }
}
