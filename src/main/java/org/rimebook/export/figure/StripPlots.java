package org.rimebook.export.figure;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.DefaultIntervalXYDataset;
import org.rimebook.station.Interval;
import org.rimebook.totals.TotalRow;

/** Makes the plot of each strip. */
final class StripPlots {

  private static final String UNTIMED = "time or amount not known";

  private final FigureData data;

  StripPlots(FigureData data) {
    this.data = data;
  }

  /**
   * The plot of a strip.
   *
   * @param strip the strip
   * @param heightPt its height [pt]
   */
  XYPlot plot(FigureStrip strip, double heightPt) {
    return switch (strip) {
      case FREQUENCY -> lines(strip, new ReadingLines(data).frequencies(), heightPt);
      case DEPTH -> lines(strip, new ReadingLines(data).depths(), heightPt);
      case CATCH -> untimed(strip, new CatchLines(data).accumulated(), heightPt);
      case ADJUSTED -> fromZero(strip, new CatchLines(data).adjusted(), heightPt);
      case HOURLY -> bars(own(strip, data.totals().hourly()), heightPt);
      case DAILY -> bars(own(strip, data.totals().daily()), heightPt);
      case NEIGHBOUR -> bars(data.beside().map(this::neighbour).orElseGet(this::nobody), heightPt);
      default ->
          lines(strip, new ReadingLines(data).channel(strip.quantity().orElseThrow()), heightPt);
    };
  }

  private static XYPlot lines(FigureStrip strip, Lines lines, double heightPt) {
    NumberAxis axis = FigureLook.valueAxis(strip.axis(), lines.low(), lines.high(), heightPt);
    return new KeyedPlot(lines.points(), axis, lines.renderer(), lines.key());
  }

  private static XYPlot fromZero(FigureStrip strip, Lines lines, double heightPt) {
    NumberAxis axis = FigureLook.valueAxis(strip.axis(), 0, lines.high(), heightPt);
    return new KeyedPlot(lines.points(), axis, lines.renderer(), lines.key());
  }

  private XYPlot untimed(FigureStrip strip, Lines lines, double heightPt) {
    NumberAxis axis = FigureLook.valueAxis(strip.axis(), 0, lines.high(), heightPt);
    List<Interval> untimed = new CatchLines(data).untimed();
    XYPlot plot = new KeyedPlot(lines.points(), axis, lines.renderer(), key(untimed));
    shade(plot, untimed);
    return plot;
  }

  private static List<KeyItem> key(List<Interval> untimed) {
    return untimed.isEmpty() ? List.of() : List.of(KeyItem.patch(UNTIMED, FigureLook.UNKNOWN));
  }

  private static void shade(XYPlot plot, List<Interval> spans) {
    for (Interval span : spans) {
      IntervalMarker marker = new IntervalMarker(span.fromMs(), span.toMs(), FigureLook.UNKNOWN);
      marker.setAlpha(1);
      plot.addDomainMarker(marker, Layer.BACKGROUND);
    }
  }

  /**
   * What bars show.
   *
   * @param axis quantity and unit
   * @param rows totals that share time with the figure
   * @param mm what a whole unit of them is [mm]
   * @param lacking where there is no total
   */
  private record Bars(String axis, List<TotalRow> rows, double mm, List<Interval> lacking) {}

  private List<TotalRow> shown(List<TotalRow> rows) {
    return rows.stream().filter(row -> row.interval().overlaps(data.span())).toList();
  }

  private Bars own(FigureStrip strip, List<TotalRow> rows) {
    List<TotalRow> shown = shown(rows);
    return new Bars(strip.axis(), shown, data.totals().resolution().mm(), lacking(shown));
  }

  private Bars nobody() {
    return new Bars(FigureStrip.NEIGHBOUR.axis(), List.of(), 1, List.of(data.span()));
  }

  private Bars neighbour(OtherDays other) {
    List<TotalRow> shown = shown(other.days());
    List<Interval> lacking = new ArrayList<>(lacking(shown));
    long known = data.span().fromMs();
    for (TotalRow row : shown) {
      lacking.addAll(between(known, row.interval().fromMs()));
      known = row.interval().toMs();
    }
    lacking.addAll(between(known, data.span().toMs()));
    String axis = "Daily catch, " + Lines.shortened(Glyphs.visible(other.name())) + " (mm)";
    return new Bars(axis, shown, other.resolution().mm(), lacking);
  }

  private static List<Interval> between(long fromMs, long toMs) {
    return toMs > fromMs ? List.of(new Interval(fromMs, toMs)) : List.of();
  }

  private static XYPlot bars(Bars of, double heightPt) {
    List<TotalRow> fallen =
        of.rows.stream()
            .filter(row -> row.catchUnits().orElse(0) > 0 && row.accumulatedSinceMs().isEmpty())
            .toList();
    DefaultIntervalXYDataset bars = new DefaultIntervalXYDataset();
    bars.addSeries(0, bars(fallen, of.mm));
    double most =
        fallen.stream().mapToLong(row -> row.catchUnits().orElse(0)).max().orElse(1) * of.mm;
    XYBarRenderer renderer = new XYBarRenderer();
    renderer.setBarPainter(new StandardXYBarPainter());
    renderer.setShadowVisible(false);
    renderer.setDrawBarOutline(true);
    renderer.setSeriesPaint(0, FigureLook.BAR);
    renderer.setSeriesOutlinePaint(0, FigureLook.BAR);
    renderer.setSeriesOutlineStroke(0, new BasicStroke(0.2f));
    renderer.setDefaultSeriesVisibleInLegend(false);
    NumberAxis axis = FigureLook.valueAxis(of.axis, 0, most, heightPt);
    XYPlot plot = new KeyedPlot(bars, axis, renderer, key(of.lacking));
    shade(plot, of.lacking);
    return plot;
  }

  /** Rows without a total of their own, those that follow each other as one. */
  private static List<Interval> lacking(List<TotalRow> rows) {
    List<Interval> spans = new ArrayList<>();
    for (TotalRow row : rows) {
      OptionalLong own =
          row.accumulatedSinceMs().isPresent() ? OptionalLong.empty() : row.catchUnits();
      if (own.isPresent()) {
        continue;
      }
      Interval at = row.interval();
      int last = spans.size() - 1;
      if (last >= 0 && spans.get(last).toMs() == at.fromMs()) {
        spans.set(last, new Interval(spans.get(last).fromMs(), at.toMs()));
      } else {
        spans.add(at);
      }
    }
    return spans;
  }

  private static double[][] bars(List<TotalRow> rows, double mm) {
    double[][] bars = new double[6][rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      Interval at = rows.get(i).interval();
      bars[0][i] = 0.5 * (at.fromMs() + at.toMs());
      bars[1][i] = at.fromMs();
      bars[2][i] = at.toMs();
      double value = rows.get(i).catchUnits().orElse(0) * mm;
      bars[3][i] = value;
      bars[4][i] = value;
      bars[5][i] = value;
    }
    return bars;
  }
}
