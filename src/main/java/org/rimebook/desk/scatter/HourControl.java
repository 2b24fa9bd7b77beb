package org.rimebook.desk.scatter;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import org.rimebook.accumulation.SunMark;

/** Points at hours and chooses them, by mouse or with the arrows and Enter. */
final class HourControl extends MouseAdapter {

  private static final int NOON = 12;

  private final HourPlot plot;
  private final IntConsumer pointed;
  private final IntConsumer chosen;

  /**
   * @param plot the plot
   * @param pointed told of the hour pointed at, or {@link HourPlot#NO_HOUR}
   * @param chosen told of the hour chosen, or {@link HourPlot#NO_HOUR} when it is given up
   */
  HourControl(HourPlot plot, IntConsumer pointed, IntConsumer chosen) {
    this.plot = plot;
    this.pointed = pointed;
    this.chosen = chosen;
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
            point(HourPlot.NO_HOUR);
          }
        });
    key("LEFT", () -> step(-1));
    key("RIGHT", () -> step(1));
    key("ENTER", () -> choose(plot.pointed()));
    key("SPACE", () -> choose(plot.pointed()));
    key("ESCAPE", () -> chosen.accept(HourPlot.NO_HOUR));
  }

  private void key(String stroke, Runnable deed) {
    plot.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
    plot.getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                if (plot.picture().isPresent()) {
                  deed.run();
                }
              }
            });
  }

  private void step(int by) {
    int now = plot.pointed();
    point(now == HourPlot.NO_HOUR ? NOON : Math.floorMod(now + by, SunMark.HOURS));
  }

  private void point(int hour) {
    plot.point(hour);
    pointed.accept(hour);
  }

  private void choose(int hour) {
    if (hour != HourPlot.NO_HOUR) {
      chosen.accept(hour);
    }
  }

  @Override
  public void mousePressed(MouseEvent event) {
    plot.requestFocusInWindow();
    choose(plot.hourAt(event.getX()));
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    point(plot.hourAt(event.getX()));
  }

  @Override
  public void mouseExited(MouseEvent event) {
    point(HourPlot.NO_HOUR);
  }
}
