package org.rimebook.export.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** How charts look: ink on white, a light grid, the window's type. */
public final class ChartLook {

  /** Words, axes and marks. */
  public static final Color INK = new Color(0x1a1a1a);

  /** Data: blue of the palette of Okabe and Ito, published for colour-blind readers. */
  public static final Color DATA = new Color(0x0072b2);

  private static final Color GRID = new Color(0xdddddd);
  private static final String TYPE = "/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf";
  private static final float SIZE_PX = 11;

  private ChartLook() {}

  /** The program's own type, so that text is as wide on every machine. */
  public static Font type() {
    try (InputStream in = ChartLook.class.getResourceAsStream(TYPE)) {
      return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(SIZE_PX);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the program's own type can't be used", e);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own type can't be read", e);
    }
  }

  /** An axis of numbers, alike in every locale. */
  public static NumberAxis numbers(String label) {
    NumberAxis axis = new NumberAxis(label);
    axis.setNumberFormatOverride(
        new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    return axis;
  }

  /** A chart without title and legend around a plot. */
  public static JFreeChart chart(XYPlot plot) {
    Font type = type();
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinePaint(GRID);
    plot.setRangeGridlinePaint(GRID);
    plot.setDomainGridlineStroke(new BasicStroke(0.6f));
    plot.setRangeGridlineStroke(new BasicStroke(0.6f));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    dress(plot.getDomainAxis(), type);
    dress(plot.getRangeAxis(), type);
    JFreeChart chart = new JFreeChart("", type, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(10, 8, 8, 16));
    return chart;
  }

  private static void dress(Axis axis, Font type) {
    axis.setTickLabelFont(type);
    axis.setLabelFont(type);
    axis.setTickLabelPaint(INK);
    axis.setLabelPaint(INK);
    axis.setAxisLinePaint(INK);
    axis.setTickMarkPaint(INK);
  }
}
