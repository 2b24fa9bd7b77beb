package org.rimebook.desk.scatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks set down against the same marks drawn one by one. */
class StampsTest {

  private static final int EDGE = 120;

  /** A lozenge with an edge that is smoothed, and a square that isn't. */
  private record Drawn(boolean lozenge) implements Stamps.Mark {
    @Override
    public void draw(Graphics2D graphics) {
      at(graphics, 0, 0);
    }

    void at(Graphics2D graphics, int x, int y) {
      if (lozenge) {
        graphics.drawPolygon(new int[] {x - 3, x, x + 3, x}, new int[] {y, y - 3, y, y + 3}, 4);
      } else {
        graphics.fillRect(x - 1, y - 1, 2, 2);
      }
    }

    @Override
    public int reach() {
      return 5;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1, true, 255",
    "1.25, true, 255",
    "1.5, true, 255",
    "1.75, true, 255",
    "2, true, 255",
    "1, false, 140",
    "1.25, false, 140",
    "1.5, false, 255",
    "1.75, false, 140",
    "2, false, 140"
  })
  void marksSetDownHaveThePixelsOfMarksDrawnOneByOne(double scale, boolean lozenge, int alpha) {
    Color colour = new Color(0x6d, 0x3f, 0x68, alpha);
    Drawn mark = new Drawn(lozenge);
    BufferedImage drawn = sheet(scale);
    Graphics2D one = graphics(drawn, scale, lozenge);
    one.setColor(colour);
    BufferedImage set = sheet(scale);
    Graphics2D other = graphics(set, scale, lozenge);
    Stamps stamps = new Stamps(other);
    stamps.colour(colour);
    for (int i = 0; i < 400; i++) {
      int x = 3 + i * 37 % (EDGE - 6);
      int y = 3 + i * 11 % (EDGE - 7);
      mark.at(one, x, y);
      stamps.set(mark, x, y);
    }
    assertThat(pixels(set)).isEqualTo(pixels(drawn)).isNotEqualTo(pixels(sheet(scale)));
  }

  private static BufferedImage sheet(double scale) {
    int edge = (int) Math.ceil(EDGE * scale);
    return new BufferedImage(edge, edge, BufferedImage.TYPE_INT_ARGB);
  }

  private static Graphics2D graphics(BufferedImage image, double scale, boolean smooth) {
    Graphics2D graphics = image.createGraphics();
    graphics.translate(2, 1);
    graphics.scale(scale, scale);
    graphics.setRenderingHint(
        RenderingHints.KEY_ANTIALIASING,
        smooth ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
    return graphics;
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}
