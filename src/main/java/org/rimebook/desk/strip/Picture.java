package org.rimebook.desk.strip;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import javax.swing.JComponent;

/**
 * What a component drew last, in pixels of the device, so that what moves over it doesn't draw it
 * anew.
 */
final class Picture {

  private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
  private double scale;
  private boolean stale = true;

  /** The next painting draws anew. */
  void spoil() {
    stale = true;
  }

  /** Paints a component, drawn anew when it has changed, its size or the device's scale. */
  void paint(Graphics2D graphics, JComponent component, Consumer<Graphics2D> drawing) {
    AffineTransform toDevice = graphics.getTransform();
    int width = (int) Math.ceil(component.getWidth() * toDevice.getScaleX());
    int height = (int) Math.ceil(component.getHeight() * toDevice.getScaleX());
    if (width < 1 || height < 1) {
      return;
    }
    if (image.getWidth() != width || image.getHeight() != height) {
      image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
      stale = true;
    }
    if (stale || scale != toDevice.getScaleX()) {
      scale = toDevice.getScaleX();
      draw(component, drawing);
      stale = false;
    }
    show(graphics, image);
  }

  private void draw(JComponent component, Consumer<Graphics2D> drawing) {
    Graphics2D onto = image.createGraphics();
    onto.scale(scale, scale);
    onto.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    onto.setColor(component.getBackground());
    onto.fillRect(0, 0, component.getWidth(), component.getHeight());
    drawing.accept(onto);
    onto.dispose();
  }

  private void show(Graphics2D graphics, Image drawn) {
    Graphics2D device = (Graphics2D) graphics.create();
    AffineTransform place = graphics.getTransform();
    device.setTransform(
        AffineTransform.getTranslateInstance(
            Math.rint(place.getTranslateX()), Math.rint(place.getTranslateY())));
    device.drawImage(drawn, 0, 0, null);
    device.dispose();
  }
}
