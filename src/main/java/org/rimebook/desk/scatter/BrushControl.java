package org.rimebook.desk.scatter;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Look;

/**
 * Points and brushes on a scatter by mouse or keys: drag, or move with the arrows and draw out with
 * Shift, then Enter; Escape gives up.
 */
final class BrushControl extends MouseAdapter {

  private static final int STEP = 6;

  private final ScatterPlot plot;
  private final Listener listener;
  private Point anchor;
  private Point at;
  private boolean dragged;

  /** Told of what is done on the scatter. */
  interface Listener {
    /** Something else is pointed at. */
    void pointed(ScatterPlot plot, Optional<ScatterPlot.Hit> hit);

    /**
     * A rectangle has been drawn.
     *
     * @param adding whether what it holds comes to the selection instead of replacing it
     */
    void brushed(ScatterPlot plot, Rectangle pixels, boolean adding);

    /** The selection is given up. */
    void givenUp();
  }

  BrushControl(ScatterPlot plot, Listener listener) {
    this.plot = plot;
    this.listener = listener;
    plot.addMouseListener(this);
    plot.addMouseMotionListener(this);
    plot.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            plot.repaint();
          }

          @Override
          public void focusLost(FocusEvent event) {
            forget();
          }
        });
    key("LEFT", () -> move(-STEP, 0, false));
    key("RIGHT", () -> move(STEP, 0, false));
    key("UP", () -> move(0, -STEP, false));
    key("DOWN", () -> move(0, STEP, false));
    key("shift LEFT", () -> move(-STEP, 0, true));
    key("shift RIGHT", () -> move(STEP, 0, true));
    key("shift UP", () -> move(0, -STEP, true));
    key("shift DOWN", () -> move(0, STEP, true));
    key("ENTER", () -> take(false));
    key("shift ENTER", () -> take(true));
    key("ESCAPE", this::giveUp);
  }

  private void key(String stroke, Runnable deed) {
    plot.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
    plot.getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                if (plot.scene().isPresent()) {
                  deed.run();
                }
              }
            });
  }

  private void move(int byX, int byY, boolean drawing) {
    Rectangle area = plot.area();
    if (at == null) {
      at = new Point((int) area.getCenterX(), (int) area.getCenterY());
      anchor = at;
    }
    int x = Math.max(area.x, Math.min(area.x + area.width, at.x + Look.px(byX)));
    int y = Math.max(area.y, Math.min(area.y + area.height, at.y + Look.px(byY)));
    at = new Point(x, y);
    if (!drawing) {
      anchor = at;
    }
    plot.draw(Optional.of(box()));
    listener.pointed(plot, plot.near(at));
  }

  private void take(boolean adding) {
    if (at != null) {
      listener.brushed(plot, box(), adding);
      forget();
    }
  }

  private void giveUp() {
    if (at == null) {
      listener.givenUp();
    }
    forget();
  }

  private void forget() {
    at = null;
    anchor = null;
    plot.draw(Optional.empty());
  }

  /** From the anchor to where it is now; a small square about a single place. */
  private Rectangle box() {
    if (anchor.equals(at)) {
      int half = Look.px(4);
      return new Rectangle(at.x - half, at.y - half, 2 * half, 2 * half);
    }
    Rectangle box = new Rectangle(anchor);
    box.add(at);
    return box;
  }

  @Override
  public void mousePressed(MouseEvent event) {
    plot.requestFocusInWindow();
    if (SwingUtilities.isLeftMouseButton(event) && plot.scene().isPresent()) {
      anchor = event.getPoint();
      at = anchor;
      dragged = true;
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    if (dragged && anchor != null) {
      at = event.getPoint();
      plot.draw(Optional.of(box()));
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (dragged && anchor != null && plot.scene().isPresent()) {
      listener.brushed(plot, box(), event.isShiftDown());
      forget();
    }
    dragged = false;
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    listener.pointed(plot, plot.near(event.getPoint()));
  }

  @Override
  public void mouseExited(MouseEvent event) {
    listener.pointed(plot, Optional.empty());
  }
}
