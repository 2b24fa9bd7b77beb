package org.rimebook.desk.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import javax.swing.UIManager;

/**
 * Colours, lines and type of the theme in force, read anew at each call so that a change of theme
 * shows at the next painting. Wire colours are of the palette of Okabe and Ito (Color Universal
 * Design, 2008), made for colour-blind readers; a line style tells wires apart as well.
 */
public final class Look {

  private static final float[][] DASHES = {{}, {7, 3}, {1.5f, 2.5f}, {8, 3, 1.5f, 3}};

  private Look() {}

  /** The ground data stands on. */
  public static Color paper() {
    return UIManager.getColor("Rimebook.paper");
  }

  /** Text, and the bucket's depth. */
  public static Color ink() {
    return UIManager.getColor("Rimebook.ink");
  }

  /** Labels and whatever isn't data. */
  public static Color muted() {
    return UIManager.getColor("Rimebook.muted");
  }

  /** Grids and edges. */
  public static Color hairline() {
    return UIManager.getColor("Rimebook.hairline");
  }

  /** The one accent: selection, handles, focus. */
  public static Color accent() {
    return UIManager.getColor("Rimebook.accent");
  }

  /** Hatch where there are no readings. */
  public static Color missing() {
    return UIManager.getColor("Rimebook.missing");
  }

  /** Weather and supply voltage. */
  public static Color weather() {
    return UIManager.getColor("Rimebook.weather");
  }

  /** Colour of a wire by its number in the station sheet. */
  public static Color wire(int number) {
    return UIManager.getColor("Rimebook.wire" + (1 + number % 4));
  }

  /** Line of a wire: solid, dashed, dotted, by its number in the station sheet. */
  public static BasicStroke wireLine(int number) {
    float[] dashes = DASHES[number % DASHES.length].clone();
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = UIScale.scale(dashes[i]);
    }
    return dashes.length == 0
        ? line()
        : new BasicStroke(width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
  }

  /** Line of anything else. */
  public static BasicStroke line() {
    return new BasicStroke(width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  /** A colour seen through. */
  public static Color faint(Color colour, double share) {
    return new Color(
        colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * share));
  }

  /** Text at a share of the normal size. */
  public static Font text(double share) {
    return sized("defaultFont", share);
  }

  /**
   * Bold text at a share of the normal size, from the bold face; deriving it from the other doesn't
   * find that one in every locale.
   */
  public static Font bold(double share) {
    return sized("Rimebook.boldFont", share);
  }

  private static Font sized(String key, double share) {
    Font font = UIManager.getFont(key);
    return font.deriveFont((float) (font.getSize2D() * share));
  }

  /** Pixels of a length given at 100 %. */
  public static int px(int at100) {
    return UIScale.scale(at100);
  }

  private static float width() {
    return UIScale.scale(1.25f);
  }
}
