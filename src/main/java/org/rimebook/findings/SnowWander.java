package org.rimebook.findings;

import java.util.Arrays;

/**
 * How a sensor of snow depth wanders with no snow falling, taken from the record itself.
 *
 * @param walkCm2 variance that wind and the sensor add in an hour, for good [cm²/h]
 * @param readingCm2 variance of an hour's mean that the next hour doesn't share [cm²]
 */
record SnowWander(double walkCm2, double readingCm2) {

  /** Half a centimetre in a day at least; such sensors are good to a centimetre (from memory). */
  private static final double LEAST_WALK_CM2 = 0.01;

  private static final double LEAST_READING_CM2 = 0.01;

  private static final int APART = 6;

  /**
   * Mean square of the smaller half of normal noise's magnitudes, to its variance. New snow makes
   * large ones; and whole centimetres, which a median would jump by, hardly matter.
   */
  private static final double LOWER_HALF = 0.1427;

  /**
   * The wander of a season.
   *
   * @param snowCm depth by block [cm]
   * @param perHour blocks in an hour
   * @param hours length of that hour [h]
   */
  static SnowWander of(double[] snowCm, int perHour, double hours) {
    double[] hourly = new double[snowCm.length / perHour];
    for (int hour = 0; hour < hourly.length; hour++) {
      hourly[hour] = RiseHours.middle(snowCm, hour * perHour, (hour + 1) * perHour);
    }
    int apart = (int) Math.max(2, Math.round(APART / hours));
    double near = bendCm2(hourly, 1);
    double far = bendCm2(hourly, apart);
    // A bend is the difference of two steps: twice the walk's and six times a reading's variance.
    double walk = Math.max(LEAST_WALK_CM2, (far - near) / (2 * (apart - 1) * hours));
    return new SnowWander(walk, Math.max(LEAST_READING_CM2, near / 6 - walk * hours / 3));
  }

  /** Usual variance of a change beyond the change before: settling snow sinks on [cm²]. */
  private static double bendCm2(double[] depthCm, int apart) {
    double[] bends = new double[depthCm.length];
    int count = 0;
    for (int hour = 2 * apart; hour < depthCm.length; hour++) {
      double bend = depthCm[hour] - 2 * depthCm[hour - apart] + depthCm[hour - 2 * apart];
      if (Double.isFinite(bend)) {
        bends[count++] = Math.abs(bend);
      }
    }
    int half = count / 2;
    Arrays.sort(bends, 0, count);
    double squares = Arrays.stream(bends, 0, half).map(cm -> cm * cm).sum();
    return half == 0 ? 0 : squares / half / LOWER_HALF;
  }
}
