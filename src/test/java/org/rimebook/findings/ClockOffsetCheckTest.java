package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClockOffsetCheckTest {

  private static final Check CHECK = new ClockOffsetCheck();

  private static HandMade season() {
    return HandMade.every(10, 70)
        .air(h -> 5 * Math.cos((h - 15) * Math.PI / 12) + 3 * Math.sin(h / 31))
        .supply(h -> 12.4 + Math.max(0, Math.sin((h - 6) * Math.PI / 12)));
  }

  @Test
  void summerTimePutOnIsNamedOverTheShorterSide() {
    List<Finding> found = season().clock(h -> h > 1200 ? h + 1 : h).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(1201, within(0.2));
    assertThat(finding.reason()).contains("forward by 60 min", "later");
    assertThat(finding.proposal().header().note()).contains("fast by 60 min");
    assertThat(finding.doubted()).isPresent();
  }

  @Test
  void summerTimeTakenOffIsNamedBeforeIt() {
    List<Finding> found = season().clock(h -> h < 480 ? h + 1 : h).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(HandMade.hour(found.get(0).span().fromMs())).isCloseTo(1, within(0.2));
    assertThat(HandMade.hour(found.get(0).span().toMs())).isCloseTo(480.8, within(0.3));
  }

  @Test
  void anHourTwiceIsSummerTimeTakenOffUnlessTheDaysSpeakAgainst() {
    HandMade dull =
        HandMade.every(10, 70)
            .air(h -> 0.7 * Math.cos((h - 15) * Math.PI / 12) + 3 * Math.sin(h / 31) * Math.cos(h));
    assertThat(dull.clock(h -> h < 480 ? h + 1 : h).found(CHECK)).hasSize(1);
    HandMade sharp =
        season().air(h -> 5 * Math.cos((h - (h < 480 ? 14 : 15)) * Math.PI / 12)).supply(h -> 12.4);
    assertThat(sharp.clock(h -> h < 480 ? h + 1 : h).found(CHECK)).isEmpty();
  }

  @Test
  void summerTimeOnAndOffIsNamedBetween() {
    List<Finding> found =
        season().clock(h -> h > 480 && h < 960 ? h + 1 : h).withoutChannels().found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("as for summer time");
  }

  @Test
  void anHourWithoutReadingsIsNoSummerTime() {
    assertThat(season().silent(h -> h > 1200 && h < 1201.1).found(CHECK)).isEmpty();
  }

  @Test
  void theClockOfAnotherPartOfTheWorldIsNamedByLongitude() {
    List<Finding> found = season().clock(h -> h + 7).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("12.0 h", "about 7 h all season");
  }

  @Test
  void aRightClockOrTooFewDaysRaiseNothing() {
    assertThat(season().found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 5).clock(h -> h + 7).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 0).found(CHECK)).isEmpty();
  }
}
