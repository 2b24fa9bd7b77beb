package org.rimebook.practice.published;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Depths written for a test: minutes from the start of the grid, and what each wire shows. */
final class Depths {

  static final double NONE = Double.NaN;

  /** 2025-01-08T00:00Z. */
  static final long START_MS = 1_736_294_400_000L;

  private Depths() {}

  static HourGrid hours(int hours) {
    return new HourGrid(START_MS, hours);
  }

  static long minute(double minute) {
    return START_MS + Math.round(minute * 60_000);
  }

  /** Rows a step apart, the first at the start. */
  static WireLevels every(double stepMin, double[]... depthMm) {
    double[] minutes = new double[depthMm[0].length];
    Arrays.setAll(minutes, row -> row * stepMin);
    return at(minutes, depthMm);
  }

  static WireLevels at(double[] minutes, double[]... depthMm) {
    return new WireLevels(Arrays.stream(minutes).mapToLong(Depths::minute).toArray(), depthMm);
  }

  /** One wire, every minute, whose level is a function of the minute. */
  static WireLevels minutely(int minutes, DoubleUnaryOperator levelMm) {
    double[] depth = new double[minutes + 1];
    Arrays.setAll(depth, levelMm::applyAsDouble);
    return every(1, depth);
  }

  static double[] wire(WireLevels levels, int wire) {
    double[] depth = new double[levels.size()];
    Arrays.setAll(depth, row -> levels.depthMm(wire, row));
    return depth;
  }

  static double[] minutesOf(WireLevels levels) {
    double[] minutes = new double[levels.size()];
    Arrays.setAll(minutes, row -> (levels.stampMs(row) - START_MS) / 60_000.0);
    return minutes;
  }
}
