package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.practice.published.Depths.NONE;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Tolerance of 0.3 mm, limit of 25 mm and median of three as in NOAA Technical Note NCDC USCRN-05-1
 * (Baker et al. 2005); the rest are our own choices.
 */
class PairwiseReferenceTest {

  private static final Offset<Double> EXACT = within(1e-9);

  private final PairwiseReference reference = new PairwiseReference(3);

  private double take(double... depthMm) {
    return reference.take(depthMm);
  }

  PairwiseReferenceTest() {
    take(100, 200, 300);
  }

  @Test
  void threeThatAgreeGiveTheirMedian() {
    assertThat(take(101.2, 201.0, 301.1)).isCloseTo(1.1, EXACT);
  }

  @Test
  void theWireCommonToTwoPairsIsTaken() {
    assertThat(take(101.0, 201.5, 301.25)).isCloseTo(1.25, EXACT);
  }

  @Test
  void theOnlyPairThatAgreesGivesItsMean() {
    assertThat(take(101.0, 205.0, 301.2)).isCloseTo(1.1, EXACT);
    assertThat(take(101.4, 200.0, 301.8)).as("again, the odd wire lower").isCloseTo(0.5, EXACT);
  }

  @Test
  void threeThatDisagreeWaitUntilTheyAgree() {
    assertThat(take(101, 202, 303)).isZero();
    assertThat(take(103, 203, 303)).isCloseTo(3, EXACT);
  }

  @Test
  void threeThatDisagreeForAnHourStartAnew() {
    for (int mark = 0; mark < 12; mark++) {
      assertThat(take(101, 202, 303)).isZero();
    }
    assertThat(take(101.5, 202.5, 303.5)).isCloseTo(0.5, EXACT);
  }

  @Test
  void lightRainAddsUpToWhatCounts() {
    assertThat(take(100.2, 200.2, 300.2)).isZero();
    assertThat(take(100.4, 200.4, 300.4)).isCloseTo(0.4, EXACT);
    assertThat(take(100.6, 200.6, 300.6)).isZero();
  }

  @Test
  void exactlyThreeTenthsCountAndAgree() {
    assertThat(take(100.3, 200.6, 300.0)).isCloseTo(0.45, EXACT);
  }

  @Test
  void aWireAloneWaitsForAnother() {
    assertThat(take(100.5, 200.1, 300.1)).isZero();
    assertThat(take(100.5, 200.4, 300.1)).isCloseTo(0.45, EXACT);
  }

  @Test
  void aWireAloneIsBelievedWhenNoOtherReads() {
    assertThat(take(100.5, NONE, NONE)).isCloseTo(0.5, EXACT);
  }

  @Test
  void twoWiresThatReadMustAgree() {
    assertThat(take(100.5, 200.9, NONE)).isZero();
    assertThat(take(100.7, 200.9, NONE)).isCloseTo(0.8, EXACT);
  }

  @Test
  void moreThanTwentyFiveMillimetresAreMissing() {
    assertThat(take(125.1, 225.0, 325.0)).isZero();
    assertThat(take(126.1, 226.0, 326.0)).isCloseTo(1.0, EXACT);
  }

  @Test
  void twentyFiveMillimetresAreNotTooMany() {
    assertThat(take(125, 225, 325)).isCloseTo(25, EXACT);
  }

  @Test
  void aFallMovesTheDepths() {
    assertThat(take(99.5, 199.5, 299.5)).isCloseTo(-0.5, EXACT);
    assertThat(take(100, 200, 300)).isCloseTo(0.5, EXACT);
  }

  @Test
  void aWireThatIsBackJoinsWhereItStands() {
    take(101, 201, NONE);
    assertThat(take(101, 201, 310)).isZero();
    assertThat(take(102, 202, 311)).isCloseTo(1, EXACT);
  }

  @Test
  void nothingIsCountedFromAReadingThatIsMissing() {
    assertThat(take(NONE, NONE, NONE)).isZero();
    assertThat(take(100.5, 200.5, 300.5)).isCloseTo(0.5, EXACT);
  }
}
