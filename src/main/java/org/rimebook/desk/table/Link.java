package org.rimebook.desk.table;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import org.rimebook.desk.look.Look;

/** Words that lead somewhere, by mouse and keyboard; they wrap where they don't fit. */
final class Link extends JButton {

  private final String words;

  private Link(String words, String where) {
    this.words = words;
    setToolTipText(where);
    getAccessibleContext().setAccessibleName(words);
    setMargin(new Insets(0, 0, 0, 0));
    putClientProperty("JButton.buttonType", "borderless");
    putClientProperty("migLayout.dynamicAspectRatio", true);
    setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
  }

  /**
   * @param words what is read
   * @param where where it leads, for its tooltip
   * @param deed goes there
   */
  static Link to(String words, String where, Runnable deed) {
    Link link = new Link(words, where);
    link.addActionListener(event -> deed.run());
    return link;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setForeground(Look.accent());
  }

  /** As wide as all the words on one line, as high as they need at the width it has. */
  @Override
  public Dimension getPreferredSize() {
    Insets around = getInsets();
    FontMetrics metrics = getFontMetrics(getFont());
    int lines = getWidth() == 0 ? 1 : lines(metrics).size();
    return new Dimension(
        metrics.stringWidth(words) + around.left + around.right,
        lines * metrics.getHeight() + around.top + around.bottom);
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean wrapsAnew = width != getWidth();
    super.setBounds(x, y, width, height);
    if (wrapsAnew) {
      revalidate();
    }
  }

  private List<String> lines(FontMetrics metrics) {
    int room = getWidth() - getInsets().left - getInsets().right;
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && metrics.stringWidth(longer) > room) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHints(TextHints.of(this));
    g.setFont(getFont());
    g.setColor(getForeground());
    FontMetrics metrics = g.getFontMetrics();
    int baseline = getInsets().top + metrics.getAscent();
    for (String line : lines(metrics)) {
      g.drawString(line, getInsets().left, baseline);
      baseline += metrics.getHeight();
    }
    g.dispose();
  }
}
