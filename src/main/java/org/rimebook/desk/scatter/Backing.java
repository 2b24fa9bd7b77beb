package org.rimebook.desk.scatter;

import java.awt.AlphaComposite;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** Keeps a drawing as long as it stays the same, in the pixels of the screen. */
final class Backing {

  private final int type;
  private BufferedImage image;
  private double scale;
  private boolean stale = true;

  private Backing(int type) {
    this.type = type;
    this.image = new BufferedImage(1, 1, type);
  }

  /** One that covers all that is under it; what is drawn has to fill it. */
  static Backing opaque() {
    return new Backing(BufferedImage.TYPE_INT_RGB);
  }

  /** One through which shows what is under it. */
  static Backing clear() {
    return new Backing(BufferedImage.TYPE_INT_ARGB);
  }

  /** Has it drawn anew at the next painting. */
  void drop() {
    stale = true;
  }

  void paint(Graphics2D graphics, Dimension size, Consumer<Graphics2D> drawing) {
    double wanted = graphics.getTransform().getScaleX();
    int width = Math.max(1, (int) Math.ceil(size.width * wanted));
    int height = Math.max(1, (int) Math.ceil(size.height * wanted));
    boolean fits = image.getWidth() == width && image.getHeight() == height;
    if (stale || wanted != scale || !fits) {
      image = fits ? image : new BufferedImage(width, height, type);
      scale = wanted;
      draw(drawing);
      stale = false;
    }
    show(graphics);
  }

  private void draw(Consumer<Graphics2D> drawing) {
    Graphics2D onto = image.createGraphics();
    onto.setComposite(AlphaComposite.Clear);
    onto.fillRect(0, 0, image.getWidth(), image.getHeight());
    onto.setComposite(AlphaComposite.SrcOver);
    onto.scale(scale, scale);
    smooth(onto);
    drawing.accept(onto);
    onto.dispose();
  }

  /** Pixel by pixel, at a whole one. */
  private void show(Graphics2D graphics) {
    AffineTransform place = graphics.getTransform();
    Graphics2D device = (Graphics2D) graphics.create();
    device.setTransform(
        AffineTransform.getTranslateInstance(
            Math.rint(place.getTranslateX()), Math.rint(place.getTranslateY())));
    device.drawImage(image, 0, 0, null);
    device.dispose();
  }

  /** Smooth edges and letters. */
  static void smooth(Graphics2D graphics) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
  }
}
