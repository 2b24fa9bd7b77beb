package org.rimebook.desk.report;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JPanel;

/** Shows one page. */
final class PageView extends JPanel {

  private final transient Dimension empty;
  private transient Optional<BufferedImage> page = Optional.empty();

  /**
   * @param empty its size while there is no page
   */
  PageView(Dimension empty) {
    this.empty = empty;
    setOpaque(false);
    getAccessibleContext().setAccessibleName("Page of the report");
  }

  void show(BufferedImage image) {
    page = Optional.of(image);
    revalidate();
    repaint();
  }

  void clear() {
    page = Optional.empty();
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    return page.map(image -> new Dimension(image.getWidth(), image.getHeight())).orElse(empty);
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    page.ifPresent(
        image -> g.drawImage(image, Math.max(0, (getWidth() - image.getWidth()) / 2), 0, null));
  }
}
