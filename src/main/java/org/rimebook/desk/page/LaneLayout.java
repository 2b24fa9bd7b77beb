package org.rimebook.desk.page;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.EdgeDrag.Edge;
import org.rimebook.desk.model.FindingsLeft;
import org.rimebook.desk.model.LaneSpan;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.strip.StackGeometry;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;

/** Where the spans of the lane lie on screen, and what lies under the pointer. */
final class LaneLayout {

  private final Marking marking;
  private final StackGeometry geometry;
  private final JComponent stack;
  private final JComponent lane;

  LaneLayout(Marking marking, StackGeometry geometry, JComponent stack, JComponent lane) {
    this.marking = marking;
    this.geometry = geometry;
    this.stack = stack;
    this.lane = lane;
  }

  /** A span and its place. */
  record Placed(LaneSpan span, Rectangle box) {}

  /** An edge under the pointer. */
  record Held(Entry entry, Edge edge) {}

  /** Rows that the notebook needs. */
  int rows() {
    return 1
        + LaneSpan.of(marking.notebook(), List.of(), left().open(), 0).stream()
            .mapToInt(LaneSpan::row)
            .max()
            .orElse(0);
  }

  private FindingsLeft left() {
    return marking.workspace().findings().get();
  }

  static int rowHeight() {
    return Look.px(18);
  }

  /** Left and right of the plots, over the whole height of the lane. */
  Rectangle plots() {
    Rectangle plots = geometry.plots();
    return new Rectangle(plots.x + offset(), 0, plots.width, lane.getHeight());
  }

  /** The instant at a place in the lane [ms since epoch]. */
  long timeAt(int x) {
    return geometry.timeAt(x - offset());
  }

  /** Where an instant lies in the lane. */
  int xAt(long epochMs) {
    return geometry.xAt(epochMs) + offset();
  }

  /** Every span on screen. */
  List<Placed> placed() {
    Rectangle plots = plots();
    int shortest = Look.px(7);
    long shortestMs = timeAt(plots.x + shortest) - timeAt(plots.x);
    List<Entry> drafts = new ArrayList<>(marking.workspace().furtherDrafts().get());
    marking.workspace().draft().get().ifPresent(drafts::add);
    int last = Math.max(0, lane.getHeight() / (rowHeight() + Look.px(2)) - 1);
    List<Placed> placed = new ArrayList<>();
    List<Finding> others = new ArrayList<>(left().open());
    left().reviewed().ifPresent(others::remove);
    for (LaneSpan span : LaneSpan.of(marking.notebook(), drafts, others, shortestMs)) {
      int left = xAt(span.interval().fromMs());
      int right = xAt(span.interval().toMs());
      int y = Look.px(2) + Math.min(span.row(), last) * (rowHeight() + Look.px(2));
      int width = Math.max(shortest, right - left);
      Rectangle box = new Rectangle(left, y, width, rowHeight());
      if (box.intersects(plots)) {
        placed.add(new Placed(span, box));
      }
    }
    return placed;
  }

  /** The part of a box up to where another begins in its row: rows are shared when they are few. */
  static Rectangle clear(Rectangle box, List<Rectangle> boxes) {
    int end =
        boxes.stream()
            .filter(other -> other.y == box.y && other.x > box.x)
            .mapToInt(other -> other.x)
            .min()
            .orElse(Integer.MAX_VALUE);
    return new Rectangle(box.x, box.y, Math.min(box.width, end - box.x), box.height);
  }

  /** The span at a place, the one drawn last if several. */
  Optional<Placed> at(Point place) {
    Optional<Placed> found = Optional.empty();
    for (Placed placed : placed()) {
      Rectangle box = placed.box();
      boolean chosen =
          placed.span().finding().isEmpty()
              && placed
                  .span()
                  .entry()
                  .header()
                  .id()
                  .equals(marking.workspace().selection().get().entry());
      if (box.contains(place) && plots().contains(place) && (found.isEmpty() || chosen)) {
        found = Optional.of(placed);
      }
    }
    return found;
  }

  /** The edge at a place, of an entry in the notebook; a third of a short span belongs to each. */
  Optional<Held> edgeAt(Point place) {
    int near = Look.px(4);
    Optional<Held> found = Optional.empty();
    int nearest = near + 1;
    for (Placed placed : placed()) {
      Rectangle box = placed.box();
      int inside = Math.min(near, box.width / 3);
      int fromStart = place.x - box.x;
      int fromEnd = box.x + box.width - place.x;
      boolean row = place.y >= box.y && place.y <= box.y + box.height;
      boolean held = !placed.span().drafted() && placed.span().finding().isEmpty();
      if (row && held && plots().contains(place)) {
        if (fromStart >= -near && fromStart <= inside && Math.abs(fromStart) < nearest) {
          nearest = Math.abs(fromStart);
          found = Optional.of(new Held(placed.span().entry(), Edge.START));
        }
        if (fromEnd >= -near && fromEnd <= inside && Math.abs(fromEnd) < nearest) {
          nearest = Math.abs(fromEnd);
          found = Optional.of(new Held(placed.span().entry(), Edge.END));
        }
      }
    }
    return found;
  }

  /** How much further right things are in the lane than in the stack. */
  private int offset() {
    boolean together =
        SwingUtilities.getRoot(lane) != null
            && SwingUtilities.getRoot(lane) == SwingUtilities.getRoot(stack);
    return together ? SwingUtilities.convertPoint(stack, 0, 0, lane).x : 0;
  }
}
