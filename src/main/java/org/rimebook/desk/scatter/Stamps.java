package org.rimebook.desk.scatter;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;

/**
 * Sets the same few marks down thousands of times. Each is drawn once for every part of a pixel it
 * comes to lie at and copied from then on, which gives the same pixels in a fraction of the time.
 */
final class Stamps {

  /** A pixel is told apart in this many parts; fits every scale a screen is set to by quarters. */
  private static final int PARTS = 256;

  private final Graphics2D graphics;
  private final Graphics2D pixels;
  private final AffineTransform toPixels;
  private final Map<Place, BufferedImage> made = new HashMap<>();
  private Color colour = Color.BLACK;

  /** A mark of one colour about the origin, within some reach of it. */
  interface Mark {
    void draw(Graphics2D graphics);

    /** How far it goes from the origin each way, edges included. */
    int reach();
  }

  private record Place(Mark mark, int across, int down) {}

  /**
   * @param graphics what they are set down on, whose stroke and hints they have
   */
  Stamps(Graphics2D graphics) {
    this.graphics = graphics;
    this.toPixels = graphics.getTransform();
    this.pixels = (Graphics2D) graphics.create();
    pixels.setTransform(new AffineTransform());
  }

  /** Colour of the marks that follow. */
  void colour(Color wanted) {
    colour = wanted;
    made.clear();
  }

  /** Sets a mark down. */
  void set(Mark mark, int x, int y) {
    double deviceX = x * toPixels.getScaleX() + toPixels.getTranslateX();
    double deviceY = y * toPixels.getScaleY() + toPixels.getTranslateY();
    int left = (int) Math.floor(deviceX);
    int top = (int) Math.floor(deviceY);
    double across = deviceX - left;
    double down = deviceY - top;
    Place place = new Place(mark, part(across), part(down));
    BufferedImage stamp = made.get(place);
    if (stamp == null) {
      stamp = stamp(mark, across, down);
      made.put(place, stamp);
    }
    pixels.drawImage(stamp, left - stamp.getWidth() / 2, top - stamp.getHeight() / 2, null);
  }

  void dispose() {
    pixels.dispose();
  }

  private static int part(double share) {
    return (int) Math.round(share * PARTS);
  }

  /** How far a mark covers each pixel is what white, as much seen through, comes to on black. */
  private BufferedImage stamp(Mark mark, double across, double down) {
    int reach = (int) Math.ceil(mark.reach() * toPixels.getScaleX()) + 1;
    int edge = 2 * reach + 1;
    BufferedImage covered = new BufferedImage(edge, edge, BufferedImage.TYPE_INT_RGB);
    Graphics2D onto = covered.createGraphics();
    onto.setRenderingHints(graphics.getRenderingHints());
    onto.translate(reach + across, reach + down);
    onto.scale(toPixels.getScaleX(), toPixels.getScaleY());
    onto.setStroke(graphics.getStroke());
    onto.setColor(new Color(0xff, 0xff, 0xff, colour.getAlpha()));
    mark.draw(onto);
    onto.dispose();
    BufferedImage stamp = new BufferedImage(edge, edge, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < edge; y++) {
      for (int x = 0; x < edge; x++) {
        int alpha = covered.getRGB(x, y) & 0xff;
        stamp.setRGB(x, y, alpha << 24 | colour.getRGB() & 0xffffff);
      }
    }
    return stamp;
  }
}
