package org.rimebook.desk.table;

import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JLabel;
import javax.swing.SwingConstants;

/** A label whose digits align with those above and below. */
final class TabularLabel extends JLabel {

  TabularLabel(String text, int alignment) {
    super(text, alignment);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics;
    g.setRenderingHints(TextHints.of(this));
    g.setFont(getFont());
    g.setColor(getForeground());
    FontMetrics metrics = g.getFontMetrics();
    int baseline = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
    if (getHorizontalAlignment() == SwingConstants.TRAILING) {
      Figures.drawTo(g, getText(), getWidth(), baseline);
    } else {
      Figures.draw(g, getText(), 0, baseline, getWidth());
    }
  }
}
