package org.rimebook.desk.scatter;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** Keeps a drawing as long as it stays the same, in the pixels of the screen. */
final class Backing {

  private BufferedImage image;
  private double scale;

  /** Has it drawn anew at the next painting. */
  void drop() {
    image = null;
  }

  void paint(Graphics2D graphics, Dimension size, Consumer<Graphics2D> drawing) {
    double wanted = graphics.getTransform().getScaleX();
    int width = (int) Math.ceil(size.width * wanted);
    int height = (int) Math.ceil(size.height * wanted);
    if (image == null
        || wanted != scale
        || image.getWidth() != width
        || image.getHeight() != height) {
      scale = wanted;
      image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
      Graphics2D onto = image.createGraphics();
      onto.scale(scale, scale);
      smooth(onto);
      drawing.accept(onto);
      onto.dispose();
    }
    graphics.drawImage(image, AffineTransform.getScaleInstance(1 / scale, 1 / scale), null);
  }

  /** Smooth edges and letters. */
  static void smooth(Graphics2D graphics) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
  }
}
