package org.rimebook.desk.scatter;

import java.awt.Dimension;
import java.awt.Graphics2D;
import org.rimebook.desk.look.Look;

/** Words in place of a plot, broken into lines that fit. */
final class EmptyWords {

  private String words = "";

  void say(String saying) {
    words = saying;
  }

  void paint(Graphics2D graphics, Dimension size) {
    graphics.setFont(Look.text(1));
    graphics.setColor(Look.muted());
    int left = Look.px(24);
    int y = size.height / 3;
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      String longer = line + word + " ";
      if (graphics.getFontMetrics().stringWidth(longer) > size.width - 2 * left) {
        graphics.drawString(line.toString(), left, y);
        y += graphics.getFontMetrics().getHeight();
        line.setLength(0);
      }
      line.append(word).append(' ');
    }
    graphics.drawString(line.toString(), left, y);
  }
}
