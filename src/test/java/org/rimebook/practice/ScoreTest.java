package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked by hand. */
class ScoreTest {

  private static final Offset<Double> EXACT = within(1e-12);

  private static Score score(double[] truthMm, double[] estimateMm) {
    return Score.of(truthMm, estimateMm);
  }

  @Test
  void errorsOfHoursAreSquaredOverWetAndDry() {
    // Errors 0.3, 0, -0.4, 0: sqrt(0.25 / 4).
    Score score = score(new double[] {1, 0, 2, 1}, new double[] {1.3, 0, 1.6, 1});
    assertThat(score.hourlyRmseMm()).isCloseTo(0.25, EXACT);
  }

  @Test
  void theBiasIsInPartsOfTheTruth() {
    Score score = score(new double[] {1, 0, 3}, new double[] {1.1, 0.1, 3});
    assertThat(score.seasonBiasPct()).isCloseTo(5, within(1e-9));
  }

  @Test
  void daysAreBlocksOfTwentyFourHours() {
    // An hour too early within the first day is no error; half a millimetre in the second is.
    double[] truth = new double[36];
    double[] estimate = new double[36];
    truth[3] = 2;
    estimate[2] = 2;
    truth[24] = 1;
    estimate[35] = 1.5;
    assertThat(score(truth, estimate).dailyRmseMm()).isCloseTo(Math.sqrt(0.125), EXACT);
  }

  @Test
  void catchInDryHoursIsFalse() {
    Score score = score(new double[] {0, 0, 1, 0}, new double[] {0.2, 0.1, 3, -0.5});
    assertThat(score.falseCatchMm()).isCloseTo(0.3, EXACT);
  }

  @Test
  void aWetHourThatPrintsAsNothingIsMissed() {
    Score score = score(new double[] {0.3, 0.4, 1, 0}, new double[] {0, 0.0049, 0.005, 0});
    assertThat(score.missedCatchMm()).isCloseTo(0.7, EXACT);
  }

  @Test
  void aSeasonWithoutPrecipitationHasNoScore() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> score(new double[] {0, 0}, new double[] {0, 1}));
  }

  @Test
  void bothMustHoldTheSameHours() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> score(new double[] {1, 0}, new double[] {1}))
        .withMessageContaining("1 values for a truth of 2");
  }
}
