package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonResult;

class DayDifferenceTest {

  private static final SeasonResult WET = wet().result();
  private static final SeasonResult JUDGED_DRY =
      wet().entry(new Entry.DrySpell(Bucket.header("d"), Bucket.span(25, 45))).result();

  private static Bucket wet() {
    return Bucket.every(15, 72).level(Bucket.rain(30, 34, 1)).noise(0.01);
  }

  @Test
  void theSameTotalsDontDiffer() {
    Totals totals = WET.totals(Resolution.TENTH);
    assertThat(DayDifference.between(totals, totals)).isEmpty();
  }

  @Test
  void aDayThatDiffersIsNamedWithTheirsLessMine() {
    List<DayDifference> days =
        DayDifference.between(WET.totals(Resolution.TENTH), JUDGED_DRY.totals(Resolution.TENTH));
    assertThat(days).hasSize(1);
    assertThat(days.get(0).mine().interval()).isEqualTo(Bucket.span(24, 48));
    assertThat(days.get(0).units().orElseThrow()).isBetween(-41L, -39L);
  }

  @Test
  void totalsOfTwoResolutionsArentCompared() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                DayDifference.between(
                    WET.totals(Resolution.TENTH), WET.totals(Resolution.HUNDREDTH)));
  }
}
