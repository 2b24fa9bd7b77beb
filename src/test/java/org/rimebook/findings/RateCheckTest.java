package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;

class RateCheckTest {

  private static final Check CHECK = new RateCheck();

  @Test
  void moreThan25MmInFiveMinutesIsDoubted() {
    List<Finding> found =
        HandMade.every(1, 3).level(h -> 150 + 30 * clamp((h - 26) * 20)).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("25 mm in 5 min");
    assertThat(found.get(0).doubted()).isPresent();
    assertThat(found.get(0).proposal()).isInstanceOf(Entry.Remark.class);
  }

  @Test
  void lessAndSlowerAndSpikesAreNot() {
    assertThat(HandMade.every(1, 3).level(h -> 150 + 20 * clamp((h - 26) * 20)).found(CHECK))
        .isEmpty();
    assertThat(HandMade.every(30, 9).level(h -> h < 50 ? 150 : 200).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 3).level(h -> Math.abs(h - 26) < 0.02 ? 190 : 150).found(CHECK))
        .isEmpty();
  }

  @Test
  void aRiseFoundToBeAVisitIsNot() {
    Scene scene = HandMade.every(1, 3).level(h -> h < 36 ? 150 : 190).scene();
    assertThat(CHECK.look(scene)).hasSize(1);
    assertThat(CHECK.look(scene.having(new UnmarkedVisitCheck().look(scene)))).isEmpty();
  }

  private static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
