package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SamplingChangeCheckTest {

  private static final Check CHECK = new SamplingChangeCheck();

  @Test
  void eachChangeOfTheSamplingIsARemark() {
    List<Finding> found =
        HandMade.every(2, 9).silent(h -> h > 50 && h < 120 && (h * 30) % 5 > 0.5).found(CHECK);
    assertThat(found).hasSize(2);
    assertThat(HandMade.hour(found.get(0).span().fromMs())).isCloseTo(50, within(0.5));
    assertThat(found.get(0).reason()).contains("every 10 min", "every 2 min");
    assertThat(found.get(0).doubted()).isEmpty();
    assertThat(HandMade.hour(found.get(1).span().fromMs())).isCloseTo(120, within(0.5));
  }

  @Test
  void aFewRowsOnAnotherIntervalAndOneSamplingRaiseNothing() {
    assertThat(
            HandMade.every(2, 9).silent(h -> h > 50 && h < 52 && (h * 30) % 5 > 0.5).found(CHECK))
        .isEmpty();
    assertThat(HandMade.every(2, 0).found(CHECK)).isEmpty();
  }
}
