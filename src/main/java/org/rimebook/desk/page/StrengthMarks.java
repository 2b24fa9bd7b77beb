package org.rimebook.desk.page;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JComponent;
import org.rimebook.desk.look.Look;

/** A strength from one to four as bars that grow, filled as far as it reaches. */
final class StrengthMarks extends JComponent {

  private static final long serialVersionUID = 1;
  private static final int ALL = 4;

  private int filled;

  /** Shows another strength. */
  void show(int marks) {
    filled = marks;
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(Look.px(26), Look.px(16));
  }

  @Override
  public Dimension getMinimumSize() {
    return getPreferredSize();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D own = Ink.of(graphics);
    int width = Look.px(4);
    int foot = Look.px(14);
    own.setStroke(Look.line());
    for (int bar = 0; bar < ALL; bar++) {
      int height = Look.px(4 + 2 * bar);
      int x = Look.px(1 + 6 * bar);
      own.setColor(bar < filled ? Look.ink() : Look.faint(Look.ink(), 0.4));
      if (bar < filled) {
        own.fillRect(x, foot - height, width, height);
      } else {
        own.drawRect(x, foot - height, width - 1, height - 1);
      }
    }
    own.dispose();
  }
}
