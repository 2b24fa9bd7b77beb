package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import org.junit.jupiter.api.Test;

class LaneLayoutTest {

  private static final Rectangle LONG = new Rectangle(100, 2, 400, 18);

  @Test
  void aWordEndsWhereAnotherSpanBeginsInItsRow() {
    Rectangle inside = new Rectangle(250, 2, 10, 18);
    Rectangle further = new Rectangle(300, 2, 10, 18);
    assertThat(LaneLayout.clear(LONG, List.of(further, LONG, inside)))
        .isEqualTo(new Rectangle(100, 2, 150, 18));
  }

  @Test
  void spansOfOtherRowsBesideOrBeforeLeaveItAlone() {
    Rectangle below = new Rectangle(250, 22, 10, 18);
    Rectangle before = new Rectangle(20, 2, 100, 18);
    Rectangle beside = new Rectangle(600, 2, 10, 18);
    assertThat(LaneLayout.clear(LONG, List.of(before, LONG, below, beside))).isEqualTo(LONG);
  }
}
