package org.rimebook.desk.page;

import java.util.List;
import javax.swing.JComponent;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.model.EdgeDrag;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.strip.StackGeometry;

/**
 * All that marking needs in one window, wired to each other: the lane to stand above the stack, the
 * gesture to be added to it as mouse listener, motion listener and overlay, the bar and the page to
 * be put where there is room.
 */
public final class MarkDesk {

  private final EntryLane lane;
  private final MarkGesture gesture;
  private final MarkBar bar;
  private final NotebookPage page;
  private final MarkActions actions;

  /**
   * @param marking what is marked
   * @param geometry where time lies
   * @param wires where the wires lie
   * @param stack the component whose pixels both speak of
   */
  public MarkDesk(Marking marking, StackGeometry geometry, WireHits wires, JComponent stack) {
    EdgeDrag drag = new EdgeDrag(marking);
    this.lane = new EntryLane(marking, drag, geometry, stack);
    this.gesture = new MarkGesture(marking, drag, geometry, wires, stack);
    this.bar = new MarkBar(marking);
    this.page = new NotebookPage(marking);
    this.actions = new MarkActions(marking, drag, gesture, page);
  }

  /** The lane of entries. */
  public EntryLane lane() {
    return lane;
  }

  /** The gesture on the strips. */
  public MarkGesture gesture() {
    return gesture;
  }

  /** The bar of kinds and fields. */
  public MarkBar bar() {
    return bar;
  }

  /** The notebook page. */
  public NotebookPage page() {
    return page;
  }

  /** The commands of all of them. */
  public List<DeskAction> actions() {
    return actions.all();
  }
}
