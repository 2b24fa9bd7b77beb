package org.rimebook.export.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Strokes, shades and type of figures. Lines differ by their dashes, so that they are told apart in
 * black and white; colours are of the palette of Okabe and Ito (2008, published for colour-blind
 * readers) and of different darkness.
 */
public final class FigureLook {

  /** Words, axes and marks. */
  public static final Color INK = new Color(0x1a1a1a);

  static final Color GRID = new Color(0xdddddd);
  static final Color UNKNOWN = new Color(0xe4e4e4);
  static final Color BAR = new Color(0x4d4d4d);
  static final double TICK_PT = 7;
  static final double LABEL_PT = 7.5;

  private static final Color[] WIRES = {
    new Color(0x0072b2), new Color(0xd55e00), new Color(0x009e73), new Color(0xcc79a7)
  };
  private static final float[][] DASHES = {{}, {5, 2.2f}, {1.2f, 1.8f}, {6, 2, 1.2f, 2}};
  private static final int MOST_TICKS = 9;
  private static final double TICK_ROOM_PT = 12.5;

  private FigureLook() {}

  /** The colour of one wire, or of the nth line of several. */
  public static Color wire(int index) {
    return WIRES[index % WIRES.length];
  }

  /** The line of one wire, or of the nth line of several. */
  public static BasicStroke line(int index, double widthPt) {
    float[] dash = DASHES[index % DASHES.length];
    return dash.length == 0
        ? new BasicStroke((float) widthPt, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
        : new BasicStroke(
            (float) widthPt, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
  }

  /** A plain number with a point and without groups, alike on every machine. */
  public static DecimalFormat numbers() {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setMinusSign('−');
    return new DecimalFormat("0.#####", symbols);
  }

  /**
   * A vertical axis, with room for words above the highest value.
   *
   * @param label quantity and unit
   * @param low lowest value
   * @param high highest value
   * @param roomPt height of the strip [pt]; sets how close ticks stand
   */
  static NumberAxis valueAxis(String label, double low, double high, double roomPt) {
    NumberAxis axis = new NumberAxis(label);
    double span = high > low ? high - low : 1;
    double free = Math.max(0.3, 1 - KeyedPlot.BAND_PT / roomPt);
    axis.setRange(low, low + span / free);
    int most = (int) Math.min(MOST_TICKS, Math.max(2, Math.floor(roomPt / TICK_ROOM_PT)));
    axis.setTickUnit(new NumberTickUnit(step(span / free / most), numbers()));
    dress(axis);
    return axis;
  }

  /** The least of 1, 2 and 5 times a power of ten that isn't below a value. */
  static double step(double least) {
    double power = 1;
    while (power > least) {
      power /= 10;
    }
    while (power * 10 <= least) {
      power *= 10;
    }
    return least <= power
        ? power
        : least <= 2 * power ? 2 * power : least <= 5 * power ? 5 * power : 10 * power;
  }

  /** Sets type and lines of an axis. */
  public static void dress(ValueAxis axis) {
    axis.setTickLabelFont(Typeface.REGULAR.font(TICK_PT));
    axis.setLabelFont(Typeface.REGULAR.font(LABEL_PT));
    axis.setTickLabelPaint(INK);
    axis.setLabelPaint(INK);
    axis.setAxisLinePaint(INK);
    axis.setTickMarkPaint(INK);
    axis.setAxisLineStroke(line(0, 0.6));
    axis.setTickMarkStroke(line(0, 0.6));
    axis.setLabelInsets(new RectangleInsets(2, 1, 1, 2));
  }

  /** Sets ground, frame and grid of a plot. */
  public static void dress(XYPlot plot) {
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlinePaint(INK);
    plot.setOutlineStroke(line(0, 0.5));
    plot.setDomainGridlinePaint(GRID);
    plot.setRangeGridlinePaint(GRID);
    plot.setDomainGridlineStroke(line(0, 0.4));
    plot.setRangeGridlineStroke(line(0, 0.4));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setRangeZeroBaselineVisible(false);
    plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
  }
}
