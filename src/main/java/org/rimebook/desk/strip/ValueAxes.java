package org.rimebook.desk.strip;

import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickUnits;
import org.jfree.chart.ui.RectangleInsets;
import org.rimebook.desk.look.Look;

/** Axes as the strips have them. */
final class ValueAxes {

  private static final int[] LEADING = {1, 2, 5};
  private static final TickUnits TICKS = ticks();

  private ValueAxes() {}

  /** An axis of values: figures only, as the grid shows where they are. */
  static NumberAxis values() {
    NumberAxis axis = new NumberAxis();
    axis.setAxisLineVisible(false);
    axis.setTickMarksVisible(false);
    axis.setStandardTickUnits(TICKS);
    axis.setAutoRange(false);
    return axis;
  }

  /** Dresses an axis for the theme in force. */
  static void dress(NumberAxis axis) {
    axis.setTickLabelFont(Look.text(0.85));
    axis.setTickLabelPaint(Look.muted());
    axis.setTickLabelInsets(new RectangleInsets(Look.px(4), 0, Look.px(4), Look.px(6)));
  }

  /** An axis of time that isn't seen. */
  static NumberAxis hidden() {
    NumberAxis axis = new NumberAxis();
    axis.setVisible(false);
    axis.setAutoRange(false);
    return axis;
  }

  private static TickUnits ticks() {
    TickUnits ticks = new TickUnits();
    for (int power = -4; power <= 7; power++) {
      for (int leading : LEADING) {
        double size = leading * StrictMath.pow(10, power);
        ticks.add(new NumberTickUnit(size, Numbers.format(Math.max(0, -power))));
      }
    }
    return ticks;
  }
}
