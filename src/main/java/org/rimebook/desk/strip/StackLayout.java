package org.rimebook.desk.strip;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import org.rimebook.desk.look.Look;

/**
 * Where the plots of the strips lie.
 *
 * @param plots all of them together
 * @param strips each, from top to bottom
 */
record StackLayout(Rectangle plots, List<Rectangle> strips) {

  /** A lower strip can't be read, at 100 %. */
  private static final int LEAST = 32;

  /** Room for figures left of the plots. */
  static int left() {
    return Look.px(56);
  }

  /** Room for names at the lines' ends. */
  static int right() {
    return Look.px(78);
  }

  /** Room for the two rows of the time axis. */
  static int bottom() {
    return Look.px(40);
  }

  /** Between two strips. */
  static int between() {
    return Look.px(8);
  }

  /** Whether every strip gets a height at which it can be read. */
  static boolean fits(Dimension size, List<Double> shares) {
    return of(size, shares).strips().stream().allMatch(strip -> strip.height >= Look.px(LEAST));
  }

  /** Shares the height of a component among strips. */
  static StackLayout of(Dimension size, List<Double> shares) {
    int width = Math.max(1, size.width - left() - right());
    int height = Math.max(1, size.height - bottom() - Look.px(4));
    Rectangle plots = new Rectangle(left(), Look.px(4), width, height);
    double whole = shares.stream().mapToDouble(Double::doubleValue).sum();
    int room = Math.max(1, height - between() * Math.max(0, shares.size() - 1));
    List<Rectangle> strips = new ArrayList<>();
    double before = 0;
    for (int i = 0; i < shares.size(); i++) {
      int top = (int) Math.round(room * before / whole);
      before += shares.get(i);
      int bottom = (int) Math.round(room * before / whole);
      strips.add(
          new Rectangle(plots.x, plots.y + top + i * between(), width, Math.max(1, bottom - top)));
    }
    return new StackLayout(plots, List.copyOf(strips));
  }

  /** The strip at a height; -1 between them. */
  int stripAt(int y) {
    for (int i = 0; i < strips.size(); i++) {
      Rectangle strip = strips.get(i);
      if (y >= strip.y && y < strip.y + strip.height) {
        return i;
      }
    }
    return -1;
  }

  /** The strip above the border at a height; -1 where there is none. */
  int borderAt(int y) {
    for (int i = 0; i + 1 < strips.size(); i++) {
      Rectangle strip = strips.get(i);
      int edge = strip.y + strip.height;
      if (y >= edge - 1 && y <= edge + between()) {
        return i;
      }
    }
    return -1;
  }
}
