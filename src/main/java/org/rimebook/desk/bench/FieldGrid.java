package org.rimebook.desk.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.List;
import java.util.stream.Stream;
import org.rimebook.desk.look.Look;

/** Fields in as many columns of one width as have room, and as high as each row needs. */
final class FieldGrid implements LayoutManager {

  private static final int LEAST_WIDTH = 152;
  private static final int APART = 12;
  private static final int MOST_COLUMNS = 3;

  private static List<Component> parts(Container parent) {
    return Stream.of(parent.getComponents()).filter(Component::isVisible).toList();
  }

  private static int columns(int width) {
    int fit = (width + Look.px(APART)) / (Look.px(LEAST_WIDTH) + Look.px(APART));
    return Math.max(1, Math.min(MOST_COLUMNS, fit));
  }

  @Override
  public void addLayoutComponent(String name, Component part) {
    // Parts need no names.
  }

  @Override
  public void removeLayoutComponent(Component part) {
    // As for adding.
  }

  @Override
  public Dimension preferredLayoutSize(Container parent) {
    int width = parent.getWidth() > 0 ? parent.getWidth() : Look.px(LEAST_WIDTH);
    return new Dimension(Look.px(LEAST_WIDTH), place(parent, width, false));
  }

  @Override
  public Dimension minimumLayoutSize(Container parent) {
    return new Dimension(0, preferredLayoutSize(parent).height);
  }

  @Override
  public void layoutContainer(Container parent) {
    place(parent, parent.getWidth(), true);
  }

  /** Height of all rows; places the parts where that is wanted. */
  private static int place(Container parent, int width, boolean wanted) {
    List<Component> parts = parts(parent);
    int columns = Math.max(1, Math.min(columns(width), parts.size()));
    int gap = Look.px(APART);
    int each = (width - gap * (columns - 1)) / columns;
    int y = 0;
    for (int first = 0; first < parts.size(); first += columns) {
      List<Component> row = parts.subList(first, Math.min(parts.size(), first + columns));
      int height = row.stream().mapToInt(p -> p.getPreferredSize().height).max().orElse(0);
      for (int i = 0; wanted && i < row.size(); i++) {
        row.get(i).setBounds(i * (each + gap), y, each, height);
      }
      y += height + Look.px(8);
    }
    return Math.max(0, y - Look.px(8));
  }
}
