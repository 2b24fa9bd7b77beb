package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Hampel's identifier (Hampel 1974, J. Am. Stat. Assoc. 69, 383; Davies and Gather 1993, J. Am.
 * Stat. Assoc. 88, 782): a value further than k·1.4826·MAD from the median is an outlier. The
 * vector is worked by hand.
 */
class HampelReferenceTest {

  private static final double[] VALUES = {0, .1, .1, .2, 5, .2, .3};

  @Test
  void medianAndScaleAgreeWithTheWorkedVector() {
    assertThat(Robust.medianInPlace(VALUES.clone(), 7)).isCloseTo(0.2, within(1e-12));
    assertThat(Robust.sdInPlace(VALUES.clone(), 7)).isCloseTo(0.1482602, within(1e-12));
  }

  @Test
  void ofTheWorkedVectorOnlyFiveIsRejected() {
    double median = Robust.medianInPlace(VALUES.clone(), 7);
    double limit = 3 * Robust.sdInPlace(VALUES.clone(), 7);
    assertThat(Arrays.stream(VALUES).filter(v -> Math.abs(v - median) > limit))
        .containsExactly(5.0);
  }

  @Test
  void theScaleOfNormalNoiseIsItsStandardDeviation() {
    Random random = new Random(3);
    double[] noise = new double[100_001];
    Arrays.setAll(noise, i -> 2 * random.nextGaussian());
    assertThat(Robust.sdInPlace(noise, noise.length)).isCloseTo(2, within(0.03));
  }
}
