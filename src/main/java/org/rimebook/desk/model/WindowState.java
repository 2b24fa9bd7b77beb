package org.rimebook.desk.model;

import java.util.Optional;

/**
 * How the window stood.
 *
 * @param place where it stood; empty when that isn't known
 * @param maximised whether it filled the screen
 * @param theme words of the theme; empty when none was chosen
 * @param scalePct size of everything [%]; 0 when none was chosen
 */
public record WindowState(Optional<Place> place, boolean maximised, String theme, int scalePct) {

  /** Nothing is known. */
  public static final WindowState UNKNOWN = new WindowState(Optional.empty(), false, "", 0);

  /**
   * A place on the screen [pixels].
   *
   * @param x left edge
   * @param y top edge
   * @param width width, positive
   * @param height height, positive
   */
  public record Place(int x, int y, int width, int height) {

    /**
     * The place on another screen: no wider and no higher than that, and from its edge on where it
     * is cut, so that all of a window can be reached.
     */
    public Place on(int screenWidth, int screenHeight) {
      boolean wide = width > screenWidth;
      boolean high = height > screenHeight;
      return new Place(
          wide ? 0 : x, high ? 0 : y, wide ? screenWidth : width, high ? screenHeight : height);
    }
  }

  /** At another place. */
  public WindowState at(Optional<Place> there, boolean whole) {
    return new WindowState(there, whole, theme, scalePct);
  }

  /** With another theme. */
  public WindowState themed(String words) {
    return new WindowState(place, maximised, words, scalePct);
  }

  /** With everything at another size. */
  public WindowState scaled(int pct) {
    return new WindowState(place, maximised, theme, pct);
  }
}
