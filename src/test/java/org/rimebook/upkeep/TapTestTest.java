package org.rimebook.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TapTestTest {

  private static final double[] REST = {0.02, -0.01, 0.03, 0, -0.02, 0.01, 0.02, -0.03};

  @Test
  void aWireThatJumpsAndComesBackIsSound() {
    TapTest test = TapTest.of(REST, new double[] {0.5, -2.5, 1}, new double[] {0.02, 0, -0.01});
    assertThat(test.jumpMm()).isCloseTo(-2.5, within(0.05));
    assertThat(test.answers()).isTrue();
    assertThat(test.comesBack()).isTrue();
  }

  @Test
  void aWireThatDoesNotJumpDoesNotAnswer() {
    TapTest test = TapTest.of(REST, new double[] {0.02, -0.03}, new double[] {0.02, 0, -0.01});
    assertThat(test.answers()).isFalse();
    assertThat(test.comesBack()).isTrue();
  }

  @Test
  void aWireThatStaysWhereTheTapPutItDoesNotComeBack() {
    TapTest test = TapTest.of(REST, new double[] {2}, new double[] {0.8, 0.82, 0.79});
    assertThat(test.answers()).isTrue();
    assertThat(test.comesBack()).isFalse();
    assertThat(test.movedMm()).isCloseTo(0.8, within(0.05));
  }

  @Test
  void tooFewReadingsAreNamedWithWhatIsNeeded() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TapTest.of(REST, new double[0], REST))
        .withMessageContaining("8, 0 and 8 are there");
  }
}
