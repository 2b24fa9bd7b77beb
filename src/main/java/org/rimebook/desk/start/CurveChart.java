package org.rimebook.desk.start;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.JPanel;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.CurveFrame;
import org.rimebook.desk.model.FirstReadings;
import org.rimebook.desk.model.NewSeason;

/** The calibration curve of each wire, depth over frequency, with the first readings on it. */
final class CurveChart extends JPanel {

  private static final int STEPS = 96;
  private static final String EMPTY =
      "Enter A, B and f0 of a wire: its curve is drawn here, with the first readings on it.";

  private final NewSeason season;

  CurveChart(NewSeason season) {
    this.season = season;
    getAccessibleContext().setAccessibleName("Calibration curves with the first readings");
    season.readings().watch(changed -> repaint());
    season.draft().watch(changed -> repaint());
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(Look.px(320), Look.px(220));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setFont(Look.text(0.85));
    g.setColor(Look.paper());
    g.fillRect(0, 0, getWidth(), getHeight());
    CurveFrame.of(season.draft().get(), season.readings().get())
        .ifPresentOrElse(frame -> new Painting(g, frame).paint(), () -> empty(g));
    g.dispose();
  }

  private void empty(Graphics2D g) {
    g.setColor(Look.muted());
    g.setFont(Look.text(1));
    FontMetrics metrics = g.getFontMetrics();
    StringBuilder line = new StringBuilder();
    int y = getHeight() / 2 - metrics.getHeight() / 2;
    int width = Math.max(1, getWidth() - Look.px(48));
    for (String word : EMPTY.split(" ")) {
      if (metrics.stringWidth(line + " " + word) > width) {
        g.drawString(line.toString(), Look.px(24), y);
        y += metrics.getHeight();
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    g.drawString(line.toString(), Look.px(24), y);
  }

  /** One painting of one frame. */
  private final class Painting {
    private final Graphics2D g;
    private final CurveFrame frame;
    private final Rectangle2D plot;

    Painting(Graphics2D g, CurveFrame frame) {
      this.g = g;
      this.frame = frame;
      FontMetrics metrics = g.getFontMetrics();
      int left = metrics.stringWidth("0000") + Look.px(12);
      int bottom = metrics.getHeight() + Look.px(8);
      this.plot =
          new Rectangle2D.Double(
              left,
              Look.px(8),
              Math.max(1, getWidth() - left - Look.px(12)),
              Math.max(1, getHeight() - bottom - Look.px(8)));
    }

    void paint() {
      grid();
      List<FirstReadings.OfWire> wires = season.readings().get().wires();
      for (int wire = 0; wire < wires.size(); wire++) {
        int number = wire;
        wires.get(wire).curve().ifPresent(curve -> curve(number, wires.get(number), curve));
      }
    }

    private double x(double hz) {
      return plot.getX() + plot.getWidth() * frame.hz().share(hz);
    }

    private double y(double mm) {
      return plot.getMaxY() - plot.getHeight() * frame.mm().share(mm);
    }

    private void grid() {
      FontMetrics metrics = g.getFontMetrics();
      g.setStroke(Look.line());
      for (double mm : frame.mm().ticks()) {
        g.setColor(Look.hairline());
        g.draw(new Line2D.Double(plot.getX(), y(mm), plot.getMaxX(), y(mm)));
        String words = String.valueOf(Math.round(mm));
        g.setColor(Look.muted());
        g.drawString(
            words,
            (float) plot.getX() - Look.px(6) - metrics.stringWidth(words),
            (float) y(mm) + metrics.getAscent() / 2f - 1);
      }
      for (double hz : frame.hz().ticks()) {
        g.setColor(Look.hairline());
        g.draw(new Line2D.Double(x(hz), plot.getY(), x(hz), plot.getMaxY()));
        String words = String.valueOf(Math.round(hz));
        g.setColor(Look.muted());
        g.drawString(
            words,
            (float) x(hz) - metrics.stringWidth(words) / 2f,
            (float) plot.getMaxY() + metrics.getAscent() + Look.px(4));
      }
      g.drawString(
          "Depth, mm",
          (float) plot.getX() + Look.px(6),
          (float) plot.getY() + metrics.getAscent() + Look.px(2));
      String below = "Frequency, Hz";
      g.drawString(
          below,
          (float) plot.getMaxX() - metrics.stringWidth(below) - Look.px(6),
          (float) plot.getMaxY() - Look.px(6));
    }

    private void curve(int number, FirstReadings.OfWire wire, CalibrationCurve curve) {
      Path2D line = new Path2D.Double();
      double from = curve.f0Hz();
      double to = frame.endHz(curve);
      for (int step = 0; step <= STEPS; step++) {
        double hz = from + (to - from) * step / STEPS;
        if (step == 0) {
          line.moveTo(x(hz), y(curve.depthMm(hz)));
        } else {
          line.lineTo(x(hz), y(curve.depthMm(hz)));
        }
      }
      Graphics2D inside = (Graphics2D) g.create();
      inside.clip(plot);
      inside.setColor(Look.wire(number));
      inside.setStroke(Look.wireLine(number));
      inside.draw(line);
      for (OptionalDouble read : wire.frequenciesHz()) {
        read.ifPresent(hz -> dot(inside, x(hz), y(curve.depthMm(hz))));
      }
      inside.dispose();
      name(number, wire.name());
    }

    private void dot(Graphics2D on, double x, double y) {
      double radius = Look.px(4);
      on.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    /** Names stand one below the other beside a piece of their line, where no curve comes. */
    private void name(int number, String words) {
      FontMetrics metrics = g.getFontMetrics();
      double left = plot.getX() + Look.px(6);
      double base = plot.getY() + metrics.getAscent() + (number + 1.3) * metrics.getHeight();
      double middle = base - metrics.getAscent() / 2.5;
      g.setColor(Look.wire(number));
      g.setStroke(Look.wireLine(number));
      g.draw(new Line2D.Double(left, middle, left + Look.px(24), middle));
      g.setColor(Look.ink());
      g.drawString(words, (float) left + Look.px(30), (float) base);
    }
  }
}
