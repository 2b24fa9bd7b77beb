package org.rimebook.desk.page;

import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.EdgeDrag;
import org.rimebook.desk.model.EdgeDrag.Edge;
import org.rimebook.desk.model.EntryTimes;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.model.ReadingSnap;
import org.rimebook.desk.model.Selection;
import org.rimebook.desk.strip.Overlay;
import org.rimebook.desk.strip.StackGeometry;
import org.rimebook.station.Interval;

/**
 * Selecting on the strips: a plain drag with the left button selects an interval, with Shift one
 * more, a drag of an edge adjusts it, or changes the entry chosen; a click on a wire chooses it, a
 * click elsewhere clears. Drags with other buttons or with Control, Alt or Meta are left to others.
 * To be added to the stack as mouse listener, motion listener and overlay.
 */
public final class MarkGesture extends MouseAdapter implements Overlay {

  private static final int OTHERS =
      InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;

  private enum Hold {
    NOTHING,
    GROUND,
    NEW_INTERVAL,
    EDGE,
    ENTRY
  }

  private record Grip(Interval interval, Edge edge) {}

  private final Marking marking;
  private final EdgeDrag drag;
  private final StackGeometry geometry;
  private final WireHits wires;
  private final JComponent stack;
  private Hold hold = Hold.NOTHING;
  private Point pressed = new Point();
  private boolean moved;
  private Selection before = Selection.NONE;
  private Grip grip = new Grip(new Interval(0, 0), Edge.START);
  private Interval moving = new Interval(0, 0);

  /**
   * @param marking what is marked
   * @param drag the edge of an entry being dragged, shared with the lane
   * @param geometry where time lies
   * @param wires where the wires lie
   * @param stack the component whose pixels the geometry speaks of
   */
  public MarkGesture(
      Marking marking, EdgeDrag drag, StackGeometry geometry, WireHits wires, JComponent stack) {
    this.marking = marking;
    this.drag = drag;
    this.geometry = geometry;
    this.wires = wires;
    this.stack = stack;
  }

  @Override
  public void mousePressed(MouseEvent event) {
    if (!plain(event) || marking.snap().isEmpty()) {
      return;
    }
    if (marking.task().get().isEmpty()) {
      stack.requestFocusInWindow();
    }
    pressed = event.getPoint();
    moved = false;
    before = selection();
    Optional<Grip> under = gripAt(event.getPoint());
    if (under.isEmpty()) {
      hold = geometry.plots().contains(pressed) ? Hold.GROUND : Hold.NOTHING;
      clickOutside(event);
      return;
    }
    grip = under.get();
    moving = grip.interval();
    hold = Hold.EDGE;
    if (marking.task().get().isEmpty() && marking.chosen().isPresent()) {
      hold = Hold.ENTRY;
      drag.grip(marking.chosen().get(), grip.edge());
    }
  }

  /** End labels may stand outside the plots: a press there can be a click on a wire. */
  private void clickOutside(MouseEvent event) {
    if (hold == Hold.NOTHING && wires.wireAt(event.getPoint()).isPresent()) {
      hold = Hold.GROUND;
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    long timeMs = geometry.timeAt(event.getX());
    moved = moved || Math.abs(event.getX() - pressed.x) > Look.px(3);
    if (!moved) {
      return;
    }
    if (hold == Hold.GROUND && geometry.plots().contains(pressed)) {
      hold = Hold.NEW_INTERVAL;
    }
    if (marking.snap().isPresent()) {
      move(event, timeMs, marking.snap().get());
    }
  }

  private void move(MouseEvent event, long timeMs, ReadingSnap snap) {
    switch (hold) {
      case NEW_INTERVAL -> {
        moving = snap.between(geometry.timeAt(pressed.x), timeMs);
        List<Interval> all =
            event.isShiftDown() ? new ArrayList<>(before.intervals()) : new ArrayList<>();
        all.add(moving);
        select(all);
      }
      case EDGE -> adjust(snap, timeMs);
      case ENTRY -> drag.to(timeMs);
      default -> {
        // a click so far
      }
    }
  }

  private void adjust(ReadingSnap snap, long timeMs) {
    moving =
        grip.edge() == Edge.START
            ? snap.withStart(grip.interval(), timeMs)
            : snap.withEnd(grip.interval(), timeMs);
    List<Interval> all = new ArrayList<>(before.intervals());
    all.remove(grip.interval());
    all.add(moving);
    select(all);
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    Hold held = hold;
    hold = Hold.NOTHING;
    if (held == Hold.ENTRY) {
      drag.release();
    } else if (held == Hold.GROUND && !event.isShiftDown()) {
      click(event.getPoint());
    }
    stack.repaint();
  }

  private void click(Point place) {
    List<String> names = marking.wires();
    int wire = wires.wireAt(place).orElse(-1);
    if (wire >= 0 && wire < names.size()) {
      marking.workspace().selection().set(before.toggled(names.get(wire)));
    } else if (marking.task().get().isEmpty()) {
      marking.workspace().selection().set(Selection.NONE);
    }
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    boolean edge = gripAt(event.getPoint()).isPresent();
    Cursor wanted = Cursor.getPredefinedCursor(Cursor.E_RESIZE_CURSOR);
    if (edge) {
      stack.setCursor(wanted);
    } else if (stack.getCursor().equals(wanted)) {
      stack.setCursor(Cursor.getDefaultCursor());
    }
  }

  /** Whether something is being dragged. */
  boolean underWay() {
    return hold != Hold.NOTHING && hold != Hold.GROUND;
  }

  /** Gives up what is being dragged: the selection is as it was. */
  void giveUp() {
    if (hold == Hold.ENTRY) {
      drag.giveUp();
    } else if (underWay()) {
      marking.workspace().selection().set(before);
    }
    hold = Hold.NOTHING;
    stack.repaint();
  }

  @Override
  public void paint(Graphics2D graphics, StackGeometry where) {
    marking.times().ifPresent(times -> paint(graphics, where.plots(), times));
  }

  private void paint(Graphics2D graphics, Rectangle plots, EntryTimes times) {
    List<Interval> intervals = selection().intervals();
    Graphics2D own = Ink.of(graphics);
    own.clip(plots);
    for (Interval interval : intervals) {
      edge(own, plots, interval.fromMs());
      edge(own, plots, interval.toMs());
    }
    for (Interval interval : intervals) {
      boolean named = underWay() || drag.underWay() ? moves(interval) : intervals.size() <= 2;
      if (named) {
        label(own, plots, times, interval);
      }
    }
    own.dispose();
  }

  private boolean moves(Interval interval) {
    return interval.equals(moving) || drag.underWay();
  }

  private void label(Graphics2D own, Rectangle plots, EntryTimes times, Interval interval) {
    int left = geometry.xAt(interval.fromMs());
    int right = geometry.xAt(interval.toMs());
    if (left >= plots.x && left <= plots.x + plots.width) {
      Ink.label(own, times.dayAndTime(interval.fromMs()), plots, left, true);
    }
    if (right >= plots.x && right <= plots.x + plots.width) {
      Ink.label(own, times.dayAndTime(interval.toMs()), plots, right, false);
    }
  }

  private void edge(Graphics2D graphics, Rectangle plots, long timeMs) {
    int x = geometry.xAt(timeMs);
    if (x >= plots.x && x <= plots.x + plots.width) {
      graphics.setColor(Look.accent());
      graphics.setStroke(Look.line());
      graphics.drawLine(x, plots.y, x, plots.y + plots.height);
      Ink.grip(graphics, x, plots.y + plots.height / 2, Look.px(24));
    }
  }

  private Optional<Grip> gripAt(Point place) {
    Rectangle plots = geometry.plots();
    int nearest = Look.px(5) + 1;
    Optional<Grip> found = Optional.empty();
    if (place.y >= plots.y && place.y <= plots.y + plots.height) {
      for (Interval interval : selection().intervals()) {
        for (Edge edge : Edge.values()) {
          long at = edge == Edge.START ? interval.fromMs() : interval.toMs();
          int apart = Math.abs(geometry.xAt(at) - place.x);
          if (apart < nearest) {
            nearest = apart;
            found = Optional.of(new Grip(interval, edge));
          }
        }
      }
    }
    return found;
  }

  private void select(List<Interval> intervals) {
    boolean changing = marking.task().get().filter(task -> !task.id().isEmpty()).isPresent();
    marking
        .workspace()
        .selection()
        .set(changing ? before.of(before.entry(), intervals) : before.with(intervals));
  }

  private Selection selection() {
    return marking.workspace().selection().get();
  }

  private static boolean plain(MouseEvent event) {
    return SwingUtilities.isLeftMouseButton(event) && (event.getModifiersEx() & OTHERS) == 0;
  }
}
