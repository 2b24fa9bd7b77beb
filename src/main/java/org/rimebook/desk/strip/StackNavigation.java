package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import javax.swing.AbstractAction;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Workspace;
import org.rimebook.station.Interval;

/**
 * Moves the view by wheel and pointer: the wheel zooms about the pointer, with Shift it pans; the
 * middle button, or Space held, drags the view; Ctrl drags a box to zoom into; the border between
 * two strips can be dragged; a click on a wire's name chooses it.
 */
final class StackNavigation extends MouseAdapter {

  private static final double ZOOM_A_NOTCH = 1.25;
  private static final double PAN_A_NOTCH = 0.1;
  private static final long SAME_MOVEMENT_MS = 600;

  private final Workspace workspace;
  private final StripStack stack;
  private Drag drag = Drag.NONE;
  private boolean spaceHeld;
  private long lastWheelMs = Long.MIN_VALUE / 2;

  /** Something being dragged. */
  interface Drag {
    Drag NONE = new Drag() {};

    default void to(Point point) {}

    default void end() {}

    default void paint(Graphics2D graphics) {}
  }

  StackNavigation(Workspace workspace, StripStack stack) {
    this.workspace = workspace;
    this.stack = stack;
    stack.addMouseListener(this);
    stack.addMouseMotionListener(this);
    stack.addMouseWheelListener(this);
    InputMap keys = stack.getInputMap(JComponent.WHEN_FOCUSED);
    bind(keys, KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, false), () -> hold(true));
    bind(keys, KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, true), () -> hold(false));
    KeyStroke escape = KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0);
    keys.put(escape, escape.toString());
    stack.getActionMap().put(escape.toString(), new Abandoning());
  }

  private void bind(InputMap keys, KeyStroke stroke, Runnable deed) {
    keys.put(stroke, stroke.toString());
    stack
        .getActionMap()
        .put(
            stroke.toString(),
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                deed.run();
              }
            });
  }

  private void hold(boolean held) {
    spaceHeld = held;
    stack.setCursor(Cursor.getPredefinedCursor(held ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
  }

  /** Gives up a drag of the view; without one the key is left to whoever else means it. */
  private final class Abandoning extends AbstractAction {
    private static final long serialVersionUID = 1;

    @Override
    public boolean accept(Object sender) {
      return drag != Drag.NONE;
    }

    @Override
    public void actionPerformed(ActionEvent event) {
      drag = Drag.NONE;
      stack.repaint();
    }
  }

  @Override
  public void mousePressed(MouseEvent event) {
    stack.requestFocusInWindow();
    StackLayout layout = stack.layoutNow();
    boolean left = SwingUtilities.isLeftMouseButton(event);
    Optional<String> wire = stack.wireAt(event.getPoint());
    if (SwingUtilities.isMiddleMouseButton(event) || left && spaceHeld) {
      drag = new PanDrag(workspace.view(), stack.plots().width, event.getX());
    } else if (left && wire.isPresent()) {
      workspace.selection().set(workspace.selection().get().toggled(wire.get()));
    } else if (left && layout.borderAt(event.getY()) >= 0) {
      drag = new BorderDrag(stack, layout.borderAt(event.getY()), event.getY());
    } else if (left && event.isControlDown() && layout.plots().contains(event.getPoint())) {
      drag = new BoxDrag(workspace.view(), stack, event.getPoint());
    } else {
      return;
    }
    event.consume();
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    if (drag != Drag.NONE) {
      drag.to(event.getPoint());
      event.consume();
      stack.repaint();
    }
    point(event);
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (drag != Drag.NONE) {
      Drag ended = drag;
      drag = Drag.NONE;
      ended.end();
      event.consume();
      stack.repaint();
    }
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    point(event);
    boolean border = stack.layoutNow().borderAt(event.getY()) >= 0;
    boolean wire = stack.wireAt(event.getPoint()).isPresent();
    int shape = border ? Cursor.N_RESIZE_CURSOR : Cursor.DEFAULT_CURSOR;
    int wanted = spaceHeld ? Cursor.MOVE_CURSOR : wire ? Cursor.HAND_CURSOR : shape;
    if (stack.getCursor().getType() != wanted) {
      stack.setCursor(Cursor.getPredefinedCursor(wanted));
    }
  }

  @Override
  public void mouseExited(MouseEvent event) {
    workspace.cursorMs().set(OptionalLong.empty());
  }

  private void point(MouseEvent event) {
    Rectangle plots = stack.plots();
    boolean inside = event.getX() >= plots.x && event.getX() < plots.x + plots.width;
    workspace
        .cursorMs()
        .set(inside ? OptionalLong.of(stack.timeAt(event.getX())) : OptionalLong.empty());
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent event) {
    if (event.getWhen() - lastWheelMs > SAME_MOVEMENT_MS) {
      workspace.view().remember();
    }
    lastWheelMs = event.getWhen();
    double notches = event.getPreciseWheelRotation();
    if (event.isShiftDown()) {
      Interval visible = workspace.view().visible().get();
      workspace.view().pan(Math.round(notches * PAN_A_NOTCH * visible.lengthMs()));
    } else {
      Rectangle plots = stack.plots();
      int x = Math.max(plots.x, Math.min(plots.x + plots.width, event.getX()));
      workspace.view().zoom(stack.timeAt(x), StrictMath.pow(ZOOM_A_NOTCH, notches));
    }
    event.consume();
  }

  /** Draws what is being dragged. */
  void paint(Graphics2D graphics) {
    drag.paint(graphics);
  }

  /** Draws a box of the accent. */
  static void box(Graphics2D graphics, Rectangle box) {
    graphics.setColor(Look.faint(Look.accent(), 0.12));
    graphics.fill(box);
    graphics.setColor(Look.accent());
    graphics.setStroke(new BasicStroke(Look.px(1)));
    graphics.drawRect(box.x, box.y, box.width, box.height);
  }

  /** Shares of the strips on screen. */
  static double sum(List<Strips.Shown> shown) {
    return shown.stream().mapToDouble(s -> s.setting().share()).sum();
  }
}
