package org.rimebook.desk.page;

import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.model.EdgeDrag;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.strip.Overlay;
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
  private final FindingActions findings;
  private final FindingOverlay overlay;

  /**
   * @param walk what is marked and found
   * @param geometry where time lies
   * @param wires where the wires lie
   * @param stack the component whose pixels both speak of
   */
  public MarkDesk(FindingWalk walk, StackGeometry geometry, WireHits wires, JComponent stack) {
    Marking marking = walk.marking();
    EdgeDrag drag = new EdgeDrag(marking);
    this.lane = new EntryLane(walk, drag, geometry, stack);
    this.gesture = new MarkGesture(marking, drag, geometry, wires, stack);
    this.bar = new MarkBar(marking);
    this.page = new NotebookPage(walk);
    this.actions = new MarkActions(walk, drag, gesture, page);
    this.findings = new FindingActions(walk);
    this.overlay = new FindingOverlay(marking.workspace());
    marking.workspace().findings().watch(left -> stack.repaint());
    marking.task().watch(task -> handBack(walk, stack));
  }

  /** A form put away leaves the keys to the walk, not to the next field of words. */
  private static void handBack(FindingWalk walk, JComponent stack) {
    if (walk.canDecide()) {
      stack.requestFocusInWindow();
    }
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

  /** The finding under review, over the strips. */
  public Overlay overlay() {
    return overlay;
  }

  /** The commands of all of them. */
  public List<DeskAction> actions() {
    return Stream.concat(actions.all().stream(), findings.all().stream()).toList();
  }
}
