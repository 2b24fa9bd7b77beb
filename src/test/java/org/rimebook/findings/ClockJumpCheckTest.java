package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;

class ClockJumpCheckTest {

  private static final Check CHECK = new ClockJumpCheck();
  private static final DoubleUnaryOperator AIR =
      h -> 5 * Math.cos((h - 15) * Math.PI / 12) + 3 * Math.sin(h / 31);
  private static final DoubleUnaryOperator SUPPLY =
      h -> 12.4 + Math.max(0, Math.sin((h - 6) * Math.PI / 12));

  private static HandMade season() {
    return HandMade.every(5, 40).air(AIR).supply(SUPPLY);
  }

  @Test
  void aClockThatJumpsForwardAndIsSetBackIsNamedOverTheTimeBetween() {
    List<Finding> found = season().clock(h -> h > 100 && h <= 300 ? h + 3.25 : h).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(103.3, within(0.1));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(303.25, within(0.1));
    assertThat(finding.reason()).contains("forward by 3 h 15 min", "8.3 days");
    assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
    assertThat(finding.doubted()).isPresent();
  }

  @Test
  void aClockThatJumpsBackIsNamedWhetherItsTimesCoincideOrNot() {
    HandMade same = season().clock(h -> h > 100 ? h - 2 : h);
    HandMade between = season().clock(h -> h > 100 ? h - 2.02 : h);
    assertThat(same.found(CHECK)).hasSize(1);
    assertThat(same.found(CHECK).get(0).reason()).contains("set back by 2 h:");
    assertThat(between.found(CHECK)).hasSize(1);
    assertThat(between.found(CHECK).get(0).reason()).contains("set back by 2 h 1 min:");
  }

  @Test
  void aJumpUnderAQuarterOfAnHourLeavesTheTotals() {
    Finding finding = season().clock(h -> h > 100 ? h - 0.1 : h).found(CHECK).get(0);
    assertThat(finding.reason()).contains("6 min");
    assertThat(finding.doubted()).isEmpty();
  }

  @Test
  void weatherThatGoesOnAcrossAHoleTellsOfAJumpAndAnOutageDoesnt() {
    HandMade jump = season().clock(h -> h > 107 ? h + 9 : h);
    HandMade outage = season().silent(h -> h > 107 && h < 116);
    List<Finding> found = jump.found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("hole of 9 h");
    assertThat(outage.found(CHECK)).isEmpty();
  }

  @Test
  void aClockThatStartedAgainIsNamedWithTheLinesSetAside() {
    Finding finding =
        season().clock(h -> h > 100 && h <= 130 ? h - 24 * 9000.0 : h).found(CHECK).get(0);
    assertThat(finding.reason()).contains("360 lines of records/a.csv", "days before");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(100, within(0.1));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(130, within(0.1));
    assertThat(finding.doubted()).isEmpty();
  }

  @Test
  void aRightClockOrAPoorRecordRaisesNothing() {
    assertThat(season().found(CHECK)).isEmpty();
    assertThat(HandMade.every(60, 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(5, 9).withoutChannels().silent(h -> h > 50 && h < 60).found(CHECK))
        .isEmpty();
  }
}
