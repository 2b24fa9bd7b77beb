package org.rimebook.desk.scatter;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.Grid;
import org.rimebook.desk.model.against.Readings;
import org.rimebook.station.Calibration;
import org.rimebook.station.Wire;

/** Draws the curve of every calibration of every wire, named where it leaves the plot. */
final class CurvePainter {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);
  private static final int STEPS = 200;

  private final Graphics2D graphics;
  private final Rectangle area;
  private final Grid grid;
  private final List<Rectangle> labels = new ArrayList<>();
  private final List<Runnable> names = new ArrayList<>();

  CurvePainter(Graphics2D graphics, Rectangle area, Grid grid) {
    this.graphics = graphics;
    this.area = area;
    this.grid = grid;
  }

  /**
   * Draws them.
   *
   * @param chosen names of the wires that stand out; empty = all
   */
  void paint(Readings readings, Set<String> chosen) {
    ZoneOffset offset = readings.season().sheet().utcOffset();
    List<Wire> wires = readings.wires();
    for (int number = 0; number < wires.size(); number++) {
      Wire wire = wires.get(number);
      boolean standsOut = chosen.isEmpty() || chosen.contains(wire.name());
      graphics.setColor(Look.faint(Look.wire(number), standsOut ? 1 : 0.35));
      graphics.setStroke(Look.wireLine(number));
      for (Calibration calibration : wire.calibrations()) {
        curve(CalibrationCurve.of(calibration), wire.name() + since(calibration, offset));
      }
    }
  }

  /** Names the curves, over whatever else is drawn. */
  void names() {
    names.forEach(Runnable::run);
  }

  private static String since(Calibration calibration, ZoneOffset offset) {
    return calibration.from().map(from -> " from " + DAY.format(from.atOffset(offset))).orElse("");
  }

  /** By depth, so that it is as smooth where it is steep. */
  private void curve(CalibrationCurve curve, String name) {
    Path2D path = new Path2D.Double();
    double topX = Double.NaN;
    double topY = 0;
    for (int step = 0; step <= STEPS; step++) {
      double share = step / (double) STEPS;
      double depthMm = grid.y().from() + share * (grid.y().to() - grid.y().from());
      if (!curve.reaches(depthMm)) {
        continue;
      }
      double x = xAt(curve.frequencyHz(depthMm));
      double y = area.y + area.height * (1 - share);
      if (path.getCurrentPoint() == null) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
      if (x <= area.x + area.width && x >= area.x) {
        topX = x;
        topY = y;
      }
    }
    graphics.draw(path);
    if (!Double.isNaN(topX)) {
      int x = (int) topX;
      int y = (int) topY;
      Color colour = graphics.getColor();
      names.add(() -> name(name, colour, new Point(x, y)));
    }
  }

  private double xAt(double frequencyHz) {
    return area.x
        + area.width * (frequencyHz - grid.x().from()) / (grid.x().to() - grid.x().from());
  }

  /** Left of the curve's end, moved down to where no other name is. */
  private void name(String name, Color colour, Point end) {
    graphics.setFont(Look.text(0.9));
    int width = graphics.getFontMetrics().stringWidth(name);
    int height = graphics.getFontMetrics().getHeight();
    int left = Math.max(area.x + Look.px(2), end.x - width - Look.px(8));
    Rectangle box = new Rectangle(left, end.y + Look.px(2), width, height);
    while (labels.stream().anyMatch(box::intersects)) {
      box.translate(0, height);
    }
    labels.add(box);
    graphics.setColor(Look.faint(Look.paper(), 0.5));
    graphics.fill(box);
    graphics.setColor(colour);
    graphics.drawString(name, box.x, box.y + graphics.getFontMetrics().getAscent());
  }
}
