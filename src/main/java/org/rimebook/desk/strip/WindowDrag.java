package org.rimebook.desk.strip;

import java.awt.Cursor;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.TimeView;
import org.rimebook.station.Interval;

/** Drags the overview's window as a whole or by an edge; a press beside it brings it there. */
final class WindowDrag extends MouseAdapter {

  private final TimeView view;
  private final SeasonOverview overview;
  private Part held = Part.NONE;
  private Interval start = new Interval(0, 1);
  private long fromMs;

  private enum Part {
    NONE,
    LEFT,
    RIGHT,
    WHOLE
  }

  WindowDrag(TimeView view, SeasonOverview overview) {
    this.view = view;
    this.overview = overview;
  }

  @Override
  public void mousePressed(MouseEvent event) {
    if (!SwingUtilities.isLeftMouseButton(event)) {
      return;
    }
    view.remember();
    held = partAt(event.getX());
    fromMs = overview.timeAt(event.getX());
    if (held == Part.NONE) {
      Interval visible = view.visible().get();
      long from = fromMs - visible.lengthMs() / 2;
      view.move(new Interval(from, from + visible.lengthMs()));
      held = Part.WHOLE;
    }
    start = view.visible().get();
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    long atMs = overview.timeAt(event.getX());
    long byMs = atMs - fromMs;
    switch (held) {
      case LEFT -> view.move(new Interval(Math.min(atMs, start.toMs()), start.toMs()));
      case RIGHT -> view.move(new Interval(start.fromMs(), Math.max(atMs, start.fromMs())));
      case WHOLE -> view.move(new Interval(start.fromMs() + byMs, start.toMs() + byMs));
      default -> {}
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    held = Part.NONE;
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    Part part = partAt(event.getX());
    boolean edge = part == Part.LEFT || part == Part.RIGHT;
    int shape = edge ? Cursor.E_RESIZE_CURSOR : Cursor.HAND_CURSOR;
    if (overview.getCursor().getType() != shape) {
      overview.setCursor(Cursor.getPredefinedCursor(shape));
    }
  }

  private Part partAt(int x) {
    Rectangle window = overview.window();
    int near = Look.px(4);
    int right = window.x + window.width;
    if (window.width > 4 * near || x < window.x || x > right) {
      if (Math.abs(x - window.x) <= near) {
        return Part.LEFT;
      }
      if (Math.abs(x - right) <= near) {
        return Part.RIGHT;
      }
    }
    return x > window.x && x < right ? Part.WHOLE : Part.NONE;
  }
}
