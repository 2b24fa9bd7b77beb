package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class ClockDriftCheckTest {

  private static final Check CHECK = new ClockDriftCheck();

  /** A clock that gains so many hours in 300 h and is set right then. */
  private static DoubleUnaryOperator gaining(double hours) {
    return h -> h + hours * (h / 300 - Math.floor(h / 300));
  }

  @Test
  void aClockThatGainsIsOneFindingThatSaysHowMuch() {
    List<Finding> found = HandMade.every(2, 60).clock(gaining(0.2)).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("gains 0.9", "4 times", "12 min");
    assertThat(found.get(0).doubted()).isEmpty();
  }

  @Test
  void totalsAreDoubtedWhereItIsOffByAQuarterOfAnHour() {
    List<Finding> found = HandMade.every(2, 60).clock(gaining(0.5)).found(CHECK);
    assertThat(found).hasSize(4);
    Finding first = found.get(0);
    assertThat(first.doubted().orElseThrow().lengthMs())
        .isBetween((long) (0.4 * first.span().lengthMs()), (long) (0.6 * first.span().lengthMs()));
  }

  @Test
  void aClockThatLosesLeavesHolesThatGrowWithTime() {
    List<Finding> found = HandMade.every(2, 60).clock(gaining(-0.2)).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("loses");
  }

  @Test
  void holesWithoutARateAreNoDrift() {
    assertThat(
            HandMade.every(2, 60)
                .silent(
                    h ->
                        h > 200 && h < 200.3
                            || h > 260 && h < 260.7
                            || h > 900 && h < 900.2
                            || h > 1000 && h < 1000.8)
                .found(CHECK))
        .isEmpty();
    assertThat(HandMade.every(2, 20).found(CHECK)).isEmpty();
  }
}
