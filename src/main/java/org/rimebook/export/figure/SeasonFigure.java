package org.rimebook.export.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.ui.RectangleInsets;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.totals.Totals;

/** A drawing for paper: a chart of a given size [pt], without title or legend of its own. */
public final class SeasonFigure {

  private static final double GAP_PT = 7;
  private static final double AXIS_PT = 26;

  private final JFreeChart chart;
  private final double widthPt;
  private final double heightPt;

  private final String identity;

  private SeasonFigure(Plot plot, double widthPt, double heightPt, String identity) {
    this.identity = identity;
    this.chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(2, 0, 1, 1));
    this.widthPt = widthPt;
    this.heightPt = heightPt;
  }

  /**
   * Strips of a season on one time axis.
   *
   * @param result the season
   * @param totals its totals
   * @param spec what is drawn, and how large
   */
  public static SeasonFigure of(SeasonResult result, Totals totals, FigureSpec spec) {
    return of(result, totals, Optional.empty(), spec);
  }

  /**
   * Strips of a season, and perhaps one of another station, on one time axis.
   *
   * @param result the season
   * @param totals its totals
   * @param beside what {@link FigureStrip#NEIGHBOUR} shows
   * @param spec what is drawn, and how large
   */
  public static SeasonFigure of(
      SeasonResult result, Totals totals, Optional<OtherDays> beside, FigureSpec spec) {
    FigureData data = new FigureData(result, totals, spec.span(), spec.widthPt(), beside);
    TimeAxis time = new TimeAxis(spec.span(), data.sheet().utcOffset(), spec.widthPt() - 50);
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(time);
    all.setGap(GAP_PT);
    FigureLook.dress(all);
    double weights = spec.strips().stream().mapToDouble(FigureStrip::weight).sum();
    double room = spec.heightPt() - AXIS_PT - GAP_PT * (spec.strips().size() - 1);
    StripPlots plots = new StripPlots(data);
    for (FigureStrip strip : spec.strips()) {
      double heightPt = room * strip.weight() / weights;
      all.add(plots.plot(strip, heightPt), (int) Math.round(100 * strip.weight()));
    }
    return new SeasonFigure(
        all,
        spec.widthPt(),
        spec.heightPt(),
        result.season().digests() + " " + spec + beside.map(OtherDays::toString).orElse(""));
  }

  /** A figure without data. */
  public static SeasonFigure blank(double widthPt, double heightPt) {
    CombinedDomainXYPlot all =
        new CombinedDomainXYPlot(new TimeAxis(new Interval(0, 1), ZoneOffset.UTC, widthPt));
    Curve curve = new Curve(new Interval(0, 1), 1);
    curve.add(0, 1);
    curve.add(1, 2);
    Lines lines = new Lines();
    lines.add("none", curve, FigureLook.wire(1), FigureLook.line(1, 1));
    NumberAxis axis = FigureLook.valueAxis("", 0, 1, heightPt);
    all.add(new KeyedPlot(lines.points(), axis, lines.renderer(), lines.key()));
    return of(all, widthPt, heightPt);
  }

  /**
   * A plot as a figure.
   *
   * @param plot the plot, dressed by {@link FigureLook}
   * @param widthPt width [pt]
   * @param heightPt height [pt]
   */
  public static SeasonFigure of(Plot plot, double widthPt, double heightPt) {
    return new SeasonFigure(plot, widthPt, heightPt, "");
  }

  /** What tells it from other figures: digests of the season, and what is shown. */
  String identity() {
    return identity;
  }

  /** Width [pt]. */
  public double widthPt() {
    return widthPt;
  }

  /** Height [pt]. */
  public double heightPt() {
    return heightPt;
  }

  /** Draws it with its top left corner at the origin. */
  void draw(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    chart.setElementHinting(false);
    chart.draw(g, new Rectangle2D.Double(0, 0, widthPt, heightPt));
  }
}
