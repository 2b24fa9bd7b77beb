package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Pooling adjacent violators on small vectors worked by hand; the method is that of Ayer et al.
 * 1955 (citation from memory).
 */
class IsotonicReferenceTest {

  private static final Offset<Double> EXACT = within(1e-12);

  private static double[] fit(double... values) {
    double[] weights = new double[values.length];
    Arrays.fill(weights, 1);
    return Isotonic.fit(values, weights);
  }

  @Test
  void violatorsArePooledToTheirMean() {
    assertThat(fit(1, 3, 2, 4, 3.5, 3, 5))
        .containsExactly(new double[] {1, 2.5, 2.5, 3.5, 3.5, 3.5, 5}, EXACT);
  }

  @Test
  void poolingReachesBackAsFarAsItMust() {
    assertThat(fit(1, 2, 6, 2, 1, 7)).containsExactly(new double[] {1, 2, 3, 3, 3, 7}, EXACT);
  }

  @Test
  void poolsCarryTheirWeights() {
    assertThat(Isotonic.fit(new double[] {3, 1, 2}, new double[] {2, 1, 1}))
        .containsExactly(new double[] {2.25, 2.25, 2.25}, EXACT);
  }
}
