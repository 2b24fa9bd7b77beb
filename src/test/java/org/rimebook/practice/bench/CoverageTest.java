package org.rimebook.practice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Worked by hand. */
class CoverageTest {

  private static final Pairs PAIRS =
      new Pairs(new double[] {1, 2, 0, 4, 1}, new double[] {1.5, 1, 5, 4, 0.9});

  @Test
  void wetSpansWithinOneAndTwoAreCounted() {
    // Errors 0.5, 1, (dry), 0, 0.1 against 0.5, 0.5, -, 0, 0.04: in 1u; in 2u; in 1u; in neither.
    Coverage coverage = Coverage.of(PAIRS, new double[] {0.5, 0.5, 0.5, 0, 0.04});
    assertThat(coverage).isEqualTo(new Coverage(4, 2, 3));
    assertThat(coverage.within1uPct()).isEqualTo(50);
    assertThat(coverage.within2uPct()).isEqualTo(75);
  }

  @Test
  void coverageOfSeveralSeasonsIsCountedTogether() {
    assertThat(new Coverage(4, 2, 3).plus(new Coverage(6, 5, 6))).isEqualTo(new Coverage(10, 7, 9));
  }

  @Test
  void anUncertaintyForEverySpanIsNeeded() {
    assertThatIllegalArgumentException().isThrownBy(() -> Coverage.of(PAIRS, new double[] {1, 1}));
  }
}
