package org.rimebook.practice;

import java.util.Arrays;

/** Sums and differences of amounts by hour or day. */
final class Amounts {

  private static final int HOURS_A_DAY = 24;

  private Amounts() {}

  static double total(double[] mm) {
    return Arrays.stream(mm).sum();
  }

  /** Sums of blocks of 24 hours from the first; an incomplete last block is kept as it is. */
  static double[] daily(double[] hourlyMm) {
    double[] daily = new double[(hourlyMm.length + HOURS_A_DAY - 1) / HOURS_A_DAY];
    for (int hour = 0; hour < hourlyMm.length; hour++) {
      daily[hour / HOURS_A_DAY] += hourlyMm[hour];
    }
    return daily;
  }

  static double rmsDifference(double[] truthMm, double[] estimateMm) {
    double sum = 0;
    for (int i = 0; i < truthMm.length; i++) {
      double error = estimateMm[i] - truthMm[i];
      sum += error * error;
    }
    return Math.sqrt(sum / truthMm.length);
  }

  static void requireSameLength(double[] truthMm, double[] other) {
    if (truthMm.length != other.length) {
      throw new IllegalArgumentException(other.length + " values for a truth of " + truthMm.length);
    }
  }
}
