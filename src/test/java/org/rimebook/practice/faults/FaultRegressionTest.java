package org.rimebook.practice.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimebook.findings.FindingKind;

/**
 * Two months of one seed of every class. How well the checks do over whole winters and seeds is
 * told by their page; this holds them to what they do on a few: no fault that has to be found is
 * missed but the three that two months don't tell, and nothing is raised that belongs to none.
 */
class FaultRegressionTest {

  private static final int DAYS = 60;
  private static final long SEED = 2;

  /** The clock's first steps, and a cap that lets go while it goes on snowing. */
  private static final Map<FaultClass, FindingKind> ONE_MISSED =
      Map.of(
          FaultClass.SUMMER_TIME, FindingKind.CLOCK_OFFSET,
          FaultClass.CLOCK_DRIFT, FindingKind.CLOCK_DRIFT,
          FaultClass.CAPPED, FindingKind.CAPPING);

  @ParameterizedTest
  @EnumSource(FaultClass.class)
  void faultsAreFoundAsWellAsBeforeAndNothingElse(FaultClass of) {
    FaultScore score = FaultScore.of(of, SEED, DAYS);
    assertThat(score.tallies())
        .allSatisfy(
            (kind, tally) -> {
              int missed = ONE_MISSED.get(of) == kind ? 1 : 0;
              assertThat(tally.due() - tally.found()).as("missed of %s", kind).isEqualTo(missed);
              assertThat(tally.wrong()).as("wrong of %s", kind).isZero();
            });
  }
}
