package org.rimebook.desk.report;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JPanel;
import org.rimebook.desk.look.Look;

/** Shows one page. */
public final class PageView extends JPanel {

  private final transient Dimension empty;
  private transient Optional<BufferedImage> page = Optional.empty();
  private boolean dimmed;

  /**
   * @param empty its size while there is no page
   */
  public PageView(Dimension empty) {
    this.empty = empty;
    setOpaque(false);
    getAccessibleContext().setAccessibleName("Page");
  }

  /** Shows a page instead of what was shown. */
  public void show(BufferedImage image) {
    page = Optional.of(image);
    revalidate();
    repaint();
  }

  /** Shows nothing. */
  public void clear() {
    page = Optional.empty();
    repaint();
  }

  /** Shows it greyed, or plainly again. */
  public void dim(boolean greyed) {
    if (dimmed != greyed) {
      dimmed = greyed;
      repaint();
    }
  }

  @Override
  public Dimension getPreferredSize() {
    return page.map(image -> new Dimension(image.getWidth(), image.getHeight())).orElse(empty);
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    page.ifPresent(image -> paint(g, image));
  }

  private void paint(Graphics g, BufferedImage image) {
    int left = Math.max(0, (getWidth() - image.getWidth()) / 2);
    g.drawImage(image, left, 0, null);
    if (dimmed) {
      g.setColor(Look.faint(Look.paper(), 0.7));
      g.fillRect(left, 0, image.getWidth(), image.getHeight());
    }
  }
}
