package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.look.Look;

class StripsColumnTest {

  private final JComponent lane = part(24, 64);
  private final JComponent stack = part(0, 0);
  private final JComponent overview = part(64, 64);
  private final StripsColumn column = new StripsColumn(lane, stack, overview);

  private static JComponent part(int least, int wanted) {
    JPanel part = new JPanel(null);
    part.setMinimumSize(new Dimension(0, Look.px(least)));
    part.setPreferredSize(new Dimension(0, Look.px(wanted)));
    return part;
  }

  private void high(int height) {
    column.setSize(Look.px(500), Look.px(height));
    column.doLayout();
  }

  @Test
  void withRoomEveryPartIsAsHighAsItWishesAndTheStripsTakeTheRest() {
    high(400);
    assertThat(heights()).containsExactly(Look.px(64), Look.px(272), Look.px(64));
    assertThat(overview.getY()).isEqualTo(Look.px(336));
  }

  @Test
  void whereItIsTightTheLaneKeepsToOneRow() {
    high(260);
    assertThat(heights()).containsExactly(Look.px(24), Look.px(172), Look.px(64));
  }

  @Test
  void whereItIsTighterTheOverviewGoes() {
    high(240);
    assertThat(heights()).containsExactly(Look.px(24), Look.px(216), 0);
  }

  private int[] heights() {
    Component[] parts = column.getComponents();
    return new int[] {parts[0].getHeight(), parts[1].getHeight(), parts[2].getHeight()};
  }
}
