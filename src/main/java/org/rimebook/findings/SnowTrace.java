package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells signals in the depth of snow from its wander. What was measured, and any signal looked for
 * in it, goes through the Kalman filter of a depth that walks at random and is read with noise (the
 * local level model: Harvey 1989, Forecasting, Structural Time Series Models and the Kalman Filter,
 * from memory), which leaves numbers of variance 1 that know nothing of each other. The depth it
 * starts from doesn't matter.
 */
final class SnowTrace {

  private final double[] gain;
  private final double[] scale;
  private final List<Part> unsure = new ArrayList<>();
  private final double[] measured;

  /**
   * @param depthCm depth by hour, without its usual course [cm]; NaN where unknown
   * @param walkCm2 variance the depth gains from the hour before to each hour [cm²]
   * @param readingCm2 variance of a reading [cm²]
   */
  SnowTrace(double[] depthCm, double[] walkCm2, double readingCm2) {
    gain = new double[depthCm.length];
    scale = new double[depthCm.length];
    double variance = Double.POSITIVE_INFINITY;
    for (int hour = 0; hour < gain.length; hour++) {
      variance += walkCm2[hour];
      if (Double.isFinite(depthCm[hour])) {
        boolean first = Double.isInfinite(variance);
        gain[hour] = first ? 1 : variance / (variance + readingCm2);
        scale[hour] = first ? 0 : 1 / Math.sqrt(variance + readingCm2);
        variance = gain[hour] * readingCm2;
      }
    }
    measured = filtered(depthCm);
  }

  private SnowTrace(SnowTrace like) {
    gain = like.gain;
    scale = like.scale;
    unsure.addAll(like.unsure);
    measured = like.measured.clone();
  }

  /**
   * A part of the usual course whose size isn't known.
   *
   * @param shape it, filtered
   * @param share how much of what looks like it is put down to it
   */
  private record Part(double[] shape, double share) {

    void takeFrom(double[] values) {
      double size = share * product(values, shape);
      for (int hour = 0; hour < values.length; hour++) {
        values[hour] -= size * shape[hour];
      }
    }
  }

  /**
   * Allows for a part of the usual course that isn't known for sure.
   *
   * @param shape depth by hour when its size is 1 [cm]
   * @param sd how far its size may be off, one standard deviation
   */
  void allow(double[] shape, double sd) {
    double[] filtered = filtered(shape);
    double power = product(filtered, filtered);
    double share = power > 0 ? (1 - 1 / Math.sqrt(1 + sd * sd * power)) / power : 0;
    Part part = new Part(filtered, share);
    part.takeFrom(measured);
    unsure.add(part);
  }

  /** The same, allowing for one part more. */
  SnowTrace allowing(double[] shape, double sd) {
    SnowTrace other = new SnowTrace(this);
    other.allow(shape, sd);
    return other;
  }

  /**
   * Logarithm of how much likelier what was measured is with a signal than without it.
   *
   * @param shape depth by hour when its size is 1 [cm]
   * @param size the size it should have
   * @param sd how far that may be off, one standard deviation
   */
  double logOdds(double[] shape, double size, double sd) {
    double[] signal = filtered(shape);
    double alike = product(signal, measured);
    double power = product(signal, signal);
    double sure = 1 / (sd * sd);
    double found = sure * size + alike;
    return (found * found / (sure + power) - sure * size * size - StrictMath.log(1 + power / sure))
        / 2;
  }

  private double[] filtered(double[] signal) {
    double[] left = new double[signal.length];
    double level = 0;
    for (int hour = 0; hour < left.length; hour++) {
      double off = gain[hour] == 0 ? 0 : signal[hour] - level;
      left[hour] = scale[hour] * off;
      level += gain[hour] * off;
    }
    unsure.forEach(part -> part.takeFrom(left));
    return left;
  }

  private static double product(double[] one, double[] other) {
    double sum = 0;
    for (int hour = 0; hour < one.length; hour++) {
      sum += one[hour] * other[hour];
    }
    return sum;
  }
}
