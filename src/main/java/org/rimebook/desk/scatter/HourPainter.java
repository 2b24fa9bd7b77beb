package org.rimebook.desk.scatter;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.rimebook.accumulation.SunMark;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.Range;
import org.rimebook.station.Wire;

/** Draws the sun's mark: a line a wire with the band of its standard error, named at its end. */
final class HourPainter {

  private final Graphics2D graphics;
  private final Rectangle area;
  private final SunMark sun;
  private final Range y;

  HourPainter(Graphics2D graphics, Rectangle area, SunMark sun) {
    this.graphics = graphics;
    this.area = area;
    this.sun = sun;
    this.y = fitted(sun);
  }

  /** What the y axis has to hold. */
  static Range fitted(SunMark sun) {
    Range range = Range.EMPTY.with(0);
    for (int wire = 0; wire < sun.wires(); wire++) {
      for (int hour = 0; hour < SunMark.HOURS; hour++) {
        double error = sun.standardErrorMm(wire, hour).orElse(0);
        range = range.with(sun.meanMm(wire, hour) - error).with(sun.meanMm(wire, hour) + error);
      }
    }
    return range.padded(0.08, 0.01);
  }

  void paint(List<Wire> wires, Set<String> chosen) {
    for (int wire = 0; wire < sun.wires(); wire++) {
      double strength = chosen.isEmpty() || chosen.contains(wires.get(wire).name()) ? 1 : 0.35;
      graphics.setColor(Look.faint(Look.wire(wire), 0.18 * strength));
      graphics.fill(band(wire));
      graphics.setColor(Look.faint(Look.wire(wire), strength));
      graphics.setStroke(Look.wireLine(wire));
      graphics.draw(line(wire));
    }
    names(wires);
  }

  private Path2D line(int wire) {
    Path2D path = new Path2D.Double();
    for (int hour = 0; hour < SunMark.HOURS; hour++) {
      add(path, hour, sun.meanMm(wire, hour));
    }
    return path;
  }

  private Path2D band(int wire) {
    Path2D path = new Path2D.Double();
    for (int hour = 0; hour < SunMark.HOURS; hour++) {
      add(path, hour, sun.meanMm(wire, hour) + sun.standardErrorMm(wire, hour).orElse(0));
    }
    for (int hour = SunMark.HOURS - 1; hour >= 0; hour--) {
      add(path, hour, sun.meanMm(wire, hour) - sun.standardErrorMm(wire, hour).orElse(0));
    }
    path.closePath();
    return path;
  }

  private void add(Path2D path, int hour, double mm) {
    double x = area.x + (hour + 0.5) * area.width / SunMark.HOURS;
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, yAt(mm));
    } else {
      path.lineTo(x, yAt(mm));
    }
  }

  private double yAt(double mm) {
    return area.y + area.height * (y.to() - mm) / (y.to() - y.from());
  }

  /** Beside the ends of the lines, from the top, each at least a line of text below the last. */
  private void names(List<Wire> wires) {
    graphics.setFont(Look.text(0.9));
    int height = graphics.getFontMetrics().getHeight();
    List<Integer> fromTop = new ArrayList<>(IntStream.range(0, sun.wires()).boxed().toList());
    fromTop.sort((one, other) -> Double.compare(end(one), end(other)));
    double least = area.y;
    for (int wire : fromTop) {
      double baseline = Math.max(least + height, end(wire) + height / 3.0);
      graphics.setColor(Look.wire(wire));
      graphics.drawString(
          wires.get(wire).name(), area.x + area.width + Look.px(4), (float) baseline);
      least = baseline;
    }
  }

  private double end(int wire) {
    return yAt(sun.meanMm(wire, SunMark.HOURS - 1));
  }
}
