package org.rimebook.desk.page;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.EdgeDrag;
import org.rimebook.desk.model.EdgeDrag.Edge;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.FindingWords;
import org.rimebook.desk.model.LaneSpan;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.strip.StackGeometry;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;

/**
 * The lane above the strips: entries that count as spans, to be chosen, opened, and dragged by
 * their edges. To be as wide as the stack or wider, and repaints itself when what it shows changes.
 */
public final class EntryLane extends JComponent {

  private final transient FindingWalk walk;
  private final transient Marking marking;
  private final transient EdgeDrag drag;
  private final transient LaneLayout layout;

  /**
   * @param walk what is marked, and found
   * @param drag the edge being dragged, shared with the strips
   * @param geometry where time lies
   * @param stack the component whose pixels the geometry speaks of
   */
  public EntryLane(FindingWalk walk, EdgeDrag drag, StackGeometry geometry, JComponent stack) {
    this.walk = walk;
    this.marking = walk.marking();
    this.drag = drag;
    this.layout = new LaneLayout(marking, geometry, stack, this);
    Hand hand = new Hand();
    addMouseListener(hand);
    addMouseMotionListener(hand);
    setFocusable(true);
    setToolTipText("");
    getAccessibleContext().setAccessibleName("Entries and findings over time");
    getAccessibleContext()
        .setAccessibleDescription("Left and right choose an entry or a finding, Enter opens it");
    key("LEFT", () -> walk(-1));
    key("RIGHT", () -> walk(1));
    key("ENTER", this::open);
    marking.workspace().opened().watch(opened -> revalidate());
    marking.workspace().opened().watch(opened -> repaint());
    marking.workspace().findings().watch(left -> revalidate());
    marking.workspace().findings().watch(left -> repaint());
    marking.workspace().draft().watch(draft -> repaint());
    marking.workspace().selection().watch(selection -> repaint());
    marking.workspace().view().visible().watch(visible -> repaint());
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Spoken();
    }
    return accessibleContext;
  }

  @Override
  public Dimension getPreferredSize() {
    int rows = Math.min(LaneSpan.MOST_ROWS, layout.rows() + 1);
    return new Dimension(0, height(rows));
  }

  /** Room for one row, which the others then share. */
  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, height(1));
  }

  private static int height(int rows) {
    return rows * (LaneLayout.rowHeight() + Look.px(2)) + Look.px(4);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D own = Ink.of(graphics);
    if (isOpaque()) {
      own.setColor(getBackground());
      own.fillRect(0, 0, getWidth(), getHeight());
    }
    Rectangle plots = layout.plots();
    own.clip(plots);
    List<LaneLayout.Placed> placed = layout.placed();
    if (placed.isEmpty() && marking.notebook().inForce().isEmpty()) {
      own.setFont(Look.text(0.92));
      own.setColor(Look.muted());
      String hint = "Entries stand here: drag across the strips to mark a time";
      own.drawString(hint, plots.x + Look.px(4), own.getFontMetrics().getAscent() + Look.px(4));
    }
    String chosen = marking.workspace().selection().get().entry();
    List<Rectangle> boxes = placed.stream().map(LaneLayout.Placed::box).toList();
    placed.forEach(p -> LanePainter.paint(own, p, LaneLayout.clear(p.box(), boxes), plots, chosen));
    own.dispose();
    paintTime(graphics, plots);
  }

  private void paintTime(Graphics graphics, Rectangle plots) {
    marking
        .times()
        .filter(times -> drag.span().isPresent())
        .ifPresent(
            times -> {
              Graphics2D own = Ink.of(graphics);
              boolean start = drag.edge() == Edge.START;
              int x = layout.xAt(drag.edgeMs().orElseThrow());
              Rectangle within = new Rectangle(plots.x, 0, plots.width, plots.height);
              Ink.label(own, times.dayAndTime(drag.edgeMs().orElseThrow()), within, x, start);
              own.dispose();
            });
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    return layout.at(event.getPoint()).map(p -> described(p.span())).orElse(null);
  }

  private String described(LaneSpan span) {
    return span.finding()
        .flatMap(finding -> marking.times().map(times -> FindingWords.line(finding, times)))
        .orElseGet(() -> described(span.entry()));
  }

  private String described(Entry entry) {
    StringBuilder words = new StringBuilder(EntryWords.kind(entry));
    marking
        .times()
        .ifPresent(times -> entry.span().ifPresent(s -> words.append(", ").append(times.span(s))));
    for (String more : List.of(EntryWords.particulars(entry), entry.header().note())) {
      words.append(more.isEmpty() ? "" : ", ").append(more);
    }
    return words.toString();
  }

  /** Chooses the entry or the finding so many further in time. */
  private void walk(int by) {
    List<LaneSpan> inOrder = LaneSpan.of(marking.notebook(), List.of(), walk.left().open(), 0);
    if (!inOrder.isEmpty() && marking.task().get().isEmpty()) {
      int now = by > 0 ? -1 : inOrder.size();
      for (int i = 0; i < inOrder.size(); i++) {
        now = isChosen(inOrder.get(i)) ? i : now;
      }
      LaneSpan next = inOrder.get(Math.floorMod(now + by, inOrder.size()));
      next.finding().ifPresentOrElse(walk::review, () -> marking.go(next.entry()));
    }
  }

  private boolean isChosen(LaneSpan span) {
    return span.finding().isPresent()
        ? walk.left().reviews(span.finding().get())
        : marking.chosen().filter(span.entry()::equals).isPresent();
  }

  private void open() {
    if (walk.canDecide()) {
      walk.change();
    } else {
      marking.chosen().ifPresent(marking::change);
    }
  }

  private void key(String stroke, Runnable deed) {
    Keys.bind(this, WHEN_FOCUSED, KeyStroke.getKeyStroke(stroke), deed);
  }

  private final class Spoken extends AccessibleJComponent {
    private static final long serialVersionUID = 1;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.LIST;
    }
  }

  /** Chooses, opens and drags. */
  private final class Hand extends MouseAdapter {
    private int pressedX;
    private boolean moved;

    @Override
    public void mousePressed(MouseEvent event) {
      requestFocusInWindow();
      pressedX = event.getX();
      moved = false;
      if (!SwingUtilities.isLeftMouseButton(event)) {
        return;
      }
      Optional<LaneLayout.Held> held =
          marking.task().get().isPresent() ? Optional.empty() : layout.edgeAt(event.getPoint());
      Optional<LaneLayout.Placed> placed = layout.at(event.getPoint());
      if (held.isPresent() && event.getClickCount() == 1) {
        drag.grip(held.get().entry(), held.get().edge());
      } else if (placed.isPresent() && placed.get().span().finding().isPresent()) {
        open(placed.get().span().finding().get(), event.getClickCount());
      } else if (placed.isPresent() && placed.get().span().drafted()) {
        openDraft(event.getClickCount());
      } else if (placed.isPresent()) {
        open(placed.get().span().entry(), event.getClickCount());
      } else if (marking.task().get().isEmpty()) {
        marking.workspace().selection().set(marking.workspace().selection().get().with(List.of()));
      }
    }

    private void open(Finding finding, int clicks) {
      if (clicks == 1) {
        walk.choose(finding);
      } else {
        walk.review(finding);
      }
    }

    /** The first click put the finding's proposal where the finding was: the second goes there. */
    private void openDraft(int clicks) {
      if (clicks > 1) {
        walk.left().reviewed().ifPresent(walk::review);
      }
    }

    private void open(Entry entry, int clicks) {
      if (clicks == 1) {
        marking.choose(entry);
      } else {
        drag.giveUp();
        marking.change(entry);
      }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
      moved = moved || Math.abs(event.getX() - pressedX) > Look.px(3);
      if (moved) {
        drag.to(layout.timeAt(event.getX()));
      }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
      if (drag.underWay()) {
        drag.release();
        repaint();
      }
    }

    @Override
    public void mouseMoved(MouseEvent event) {
      boolean edge = marking.task().get().isEmpty() && layout.edgeAt(event.getPoint()).isPresent();
      setCursor(Cursor.getPredefinedCursor(edge ? Cursor.E_RESIZE_CURSOR : Cursor.DEFAULT_CURSOR));
    }
  }
}
