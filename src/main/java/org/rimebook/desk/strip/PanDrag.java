package org.rimebook.desk.strip;

import java.awt.Point;
import org.rimebook.desk.model.TimeView;
import org.rimebook.station.Interval;

/** Drags the view along in time. */
final class PanDrag implements StackNavigation.Drag {

  private final TimeView view;
  private final Interval start;
  private final int width;
  private final int fromX;

  /**
   * @param view the view
   * @param width pixels that show it
   * @param fromX where the drag starts
   */
  PanDrag(TimeView view, int width, int fromX) {
    this.view = view;
    this.start = view.visible().get();
    this.width = width;
    this.fromX = fromX;
    view.remember();
  }

  @Override
  public void to(Point point) {
    long byMs = Math.round((fromX - point.x) * (double) start.lengthMs() / width);
    view.move(new Interval(start.fromMs() + byMs, start.toMs() + byMs));
  }
}
