package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;

class SnowTraceProperties {

  /** So unsure is the depth it starts from, squared [cm²]. */
  private static final double ANY_DEPTH_CM2 = 1e6;

  private static final double READING_CM2 = 0.09;

  private static double[] values(long seed, int size) {
    Random random = new Random(seed);
    return random.doubles(size, -3, 3).toArray();
  }

  private static double[] walk(int size) {
    double[] walk = new double[size];
    Arrays.setAll(walk, hour -> 0.03 + 0.02 * (hour % 3));
    return walk;
  }

  private static double[] line(int size) {
    double[] line = new double[size];
    Arrays.setAll(line, hour -> hour);
    return line;
  }

  private static double[] stepAt(int at, int size) {
    double[] step = new double[size];
    Arrays.fill(step, at, size, 1);
    return step;
  }

  /** Log density of the depths under all that may move them, written out as one covariance. */
  private static double logDensity(
      double[] depthCm, double slopeSd, double[] shape, double[] size) {
    int count = depthCm.length;
    double[] mean = new double[count];
    double[][] covariance = new double[count][count];
    double[] walk = walk(count);
    double[] walked = new double[count];
    for (int hour = 1; hour < count; hour++) {
      walked[hour] = walked[hour - 1] + walk[hour];
    }
    for (int one = 0; one < count; one++) {
      mean[one] = size[0] * shape[one];
      for (int other = 0; other < count; other++) {
        covariance[one][other] =
            ANY_DEPTH_CM2
                + walked[Math.min(one, other)]
                + (one == other ? READING_CM2 : 0)
                + slopeSd * slopeSd * one * other
                + size[1] * size[1] * shape[one] * shape[other];
      }
    }
    return Math.log(new MultivariateNormalDistribution(mean, covariance).density(depthCm));
  }

  @Property(tries = 100)
  void oddsAreThoseOfTheNormalDistributionsWrittenOut(
      @ForAll @IntRange(min = 4, max = 12) int size,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.2, max = 2) double expected,
      @ForAll @DoubleRange(min = 0.1, max = 1) double sd) {
    double[] depthCm = values(seed, size);
    double[] shape = stepAt(size / 2, size);
    SnowTrace trace = new SnowTrace(depthCm, walk(size), READING_CM2);
    trace.allow(line(size), 0.1);
    double written =
        logDensity(depthCm, 0.1, shape, new double[] {expected, sd})
            - logDensity(depthCm, 0.1, shape, new double[] {0, 0});
    assertThat(trace.logOdds(shape, expected, sd)).isCloseTo(written, within(1e-3));
  }

  @Property(tries = 100)
  void howDeepItLiesTellsNothing(
      @ForAll long seed, @ForAll @DoubleRange(min = -100, max = 300) double deeperCm) {
    double[] depthCm = values(seed, 20);
    double[] deeper = Arrays.stream(depthCm).map(cm -> cm + deeperCm).toArray();
    SnowTrace trace = new SnowTrace(depthCm, walk(20), READING_CM2);
    SnowTrace other = new SnowTrace(deeper, walk(20), READING_CM2);
    double[] shape = stepAt(9, 20);
    assertThat(other.logOdds(shape, 1, 0.5)).isCloseTo(trace.logOdds(shape, 1, 0.5), within(1e-9));
  }

  @Property(tries = 100)
  void whatIsAllowedForTellsNothing(
      @ForAll long seed, @ForAll @DoubleRange(min = -1, max = 1) double slope) {
    double[] depthCm = values(seed, 20);
    double[] sloping = depthCm.clone();
    Arrays.setAll(sloping, hour -> depthCm[hour] + slope * hour);
    SnowTrace trace = new SnowTrace(depthCm, walk(20), READING_CM2);
    SnowTrace other = new SnowTrace(sloping, walk(20), READING_CM2);
    trace.allow(line(20), 1e4);
    other.allow(line(20), 1e4);
    double[] shape = stepAt(9, 20);
    assertThat(other.logOdds(shape, 1, 0.5)).isCloseTo(trace.logOdds(shape, 1, 0.5), within(1e-4));
  }

  @Property(tries = 100)
  void anHourThatIsntKnownIsAsIfItWerentThere(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 18) int unknown) {
    double[] depthCm = values(seed, 20);
    double[] walk = walk(20);
    depthCm[unknown] = Double.NaN;
    double[] left = new double[19];
    double[] leftWalk = new double[19];
    double[] leftShape = new double[19];
    double[] shape = stepAt(9, 20);
    for (int hour = 0; hour < 19; hour++) {
      int of = hour < unknown ? hour : hour + 1;
      left[hour] = depthCm[of];
      leftWalk[hour] = walk[of] + (of == unknown + 1 ? walk[unknown] : 0);
      leftShape[hour] = shape[of];
    }
    double odds = new SnowTrace(depthCm, walk, READING_CM2).logOdds(shape, 1, 0.5);
    double without = new SnowTrace(left, leftWalk, READING_CM2).logOdds(leftShape, 1, 0.5);
    assertThat(odds).isCloseTo(without, within(1e-9));
  }
}
