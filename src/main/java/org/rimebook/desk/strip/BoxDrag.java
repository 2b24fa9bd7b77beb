package org.rimebook.desk.strip;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.model.TimeView;
import org.rimebook.station.Interval;

/**
 * Drags a box to zoom into: in time, and when it has a height, in the values of the strip it was
 * begun in, whose axis then stays.
 */
final class BoxDrag implements StackNavigation.Drag {

  private static final int LEAST_WIDTH = 4;
  private static final int LEAST_HEIGHT = 12;

  private final TimeView view;
  private final StripStack stack;
  private final Point from;
  private Point to;

  BoxDrag(TimeView view, StripStack stack, Point from) {
    this.view = view;
    this.stack = stack;
    this.from = from;
    this.to = from;
  }

  @Override
  public void to(Point point) {
    Rectangle plots = stack.plots();
    to =
        new Point(
            Math.max(plots.x, Math.min(plots.x + plots.width, point.x)),
            Math.max(plots.y, Math.min(plots.y + plots.height, point.y)));
  }

  @Override
  public void end() {
    Rectangle box = box();
    if (box.width < Look.px(LEAST_WIDTH)) {
      return;
    }
    Interval wanted = new Interval(stack.timeAt(box.x), stack.timeAt(box.x + box.width));
    view.remember();
    if (hasHeight()) {
      values();
    }
    view.move(wanted);
  }

  private void values() {
    StackLayout layout = stack.layoutNow();
    int strip = layout.stripAt(from.y);
    Rectangle area = layout.strips().get(strip);
    Strips.Shown shown = stack.shown().get(strip);
    Extent range = shown.plot().range();
    Rectangle box = box();
    double aPixel = (range.most() - range.least()) / area.height;
    double most = range.most() - (box.y - area.y) * aPixel;
    Extent within = new Extent(most - box.height * aPixel, most);
    stack.strips().change(shown.setting().staying(within));
  }

  private boolean hasHeight() {
    return stack.layoutNow().stripAt(from.y) >= 0
        && Math.abs(to.y - from.y) >= Look.px(LEAST_HEIGHT);
  }

  /** The box: of the height of all strips while it zooms into time alone. */
  private Rectangle box() {
    StackLayout layout = stack.layoutNow();
    Rectangle box = new Rectangle(from);
    box.add(to);
    if (!hasHeight()) {
      Rectangle plots = layout.plots();
      return new Rectangle(box.x, plots.y, box.width, plots.height);
    }
    return box.intersection(layout.strips().get(layout.stripAt(from.y)));
  }

  @Override
  public void paint(Graphics2D graphics) {
    StackNavigation.box(graphics, box());
  }
}
