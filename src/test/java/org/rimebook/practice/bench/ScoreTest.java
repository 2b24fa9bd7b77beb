package org.rimebook.practice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked by hand. */
class ScoreTest {

  private static final Offset<Double> EXACT = within(1e-12);
  private static final Pairs A_DAY = new Pairs(new double[] {1}, new double[] {1});

  private static Score score(double[] truthMm, double[] estimateMm) {
    return Score.of(new Pairs(truthMm, estimateMm), A_DAY, 1);
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
  void daysHaveTheirOwnErrors() {
    Pairs days = new Pairs(new double[] {2, 1}, new double[] {2, 1.5});
    assertThat(Score.of(A_DAY, days, 1).dailyRmseMm()).isCloseTo(Math.sqrt(0.125), EXACT);
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
  void falseAndMissedCatchOfAShortSeasonCountAsForHalfAYear() {
    Pairs hours = new Pairs(new double[] {0, 0.4}, new double[] {0.2, 0});
    Score score = Score.of(hours, A_DAY, 3);
    assertThat(score.falseCatchMm()).isCloseTo(0.6, EXACT);
    assertThat(score.missedCatchMm()).isCloseTo(1.2, EXACT);
    assertThat(score.seasonBiasPct()).isCloseTo(-50, within(1e-9));
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
