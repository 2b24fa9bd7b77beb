package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked by hand. */
class StatedUncertaintyTest {

  private static final double[] TRUTH = {1, 2, 0, 4, 1};
  private static final double[] ESTIMATE = {1.5, 1, 5, 4, 0.9};

  private static Coverage hours(double... uMm) {
    return new StatedUncertainty(uMm, new double[1], 1).against(TRUTH, ESTIMATE).hours();
  }

  @Test
  void wetHoursWithinOneAndTwoAreCounted() {
    // Errors 0.5, 1, (dry), 0, 0.1 against 0.5, 0.5, -, 0, 0.04: in 1u; in 2u; in 1u; in neither.
    Coverage hours = hours(0.5, 0.5, 0.5, 0, 0.04);
    assertThat(hours).isEqualTo(new Coverage(4, 2, 3));
    assertThat(hours.within1uPct()).isEqualTo(50);
    assertThat(hours.within2uPct()).isEqualTo(75);
  }

  @Test
  void daysAreHeldToTheirOwn() {
    // The first day is 0.4 too high, the second dry.
    double[] truth = new double[48];
    double[] estimate = new double[48];
    truth[0] = 3;
    truth[23] = 1;
    estimate[1] = 4.4;
    estimate[30] = 9;
    StatedUncertainty stated = new StatedUncertainty(new double[48], new double[] {0.25, 1}, 1);
    assertThat(stated.against(truth, estimate).days()).isEqualTo(new Coverage(1, 0, 1));
  }

  @Test
  void theSeasonsErrorIsInItsOwnUncertainty() {
    // 12.4 for 8.
    StatedUncertainty stated = new StatedUncertainty(new double[5], new double[1], 2);
    assertThat(stated.against(TRUTH, ESTIMATE).seasonErrorInU()).isCloseTo(2.2, within(1e-12));
    assertThat(stated.against(ESTIMATE, TRUTH).seasonErrorInU()).isCloseTo(2.2, within(1e-12));
  }

  @Test
  void seasonsAreCountedTogether() {
    assertThat(new Coverage(4, 2, 3).plus(new Coverage(6, 5, 6))).isEqualTo(new Coverage(10, 7, 9));
  }

  @Test
  void anUncertaintyForEveryHourIsNeeded() {
    assertThatIllegalArgumentException().isThrownBy(() -> hours(1, 1));
  }
}
