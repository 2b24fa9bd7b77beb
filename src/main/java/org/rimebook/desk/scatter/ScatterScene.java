package org.rimebook.desk.scatter;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Set;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.AgainstPicture;
import org.rimebook.desk.model.against.AgainstWords;
import org.rimebook.desk.model.against.Scatter;
import org.rimebook.desk.model.against.Scatter.Layer;

/**
 * One scatter with all that is drawn and said of it.
 *
 * @param picture the picture it is of
 * @param scatter the scatter
 * @param kind which of the two
 */
record ScatterScene(AgainstPicture picture, Scatter scatter, Kind kind) {

  /** The two scatters. */
  enum Kind {
    CURVE("Frequency against depth"),
    PAIR("Wire against wire");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  AgainstWords words() {
    return new AgainstWords(picture.readings());
  }

  String xLabel() {
    return kind == Kind.CURVE
        ? "frequency of each wire, Hz"
        : "depth of the bucket (mean of its wires), mm";
  }

  String yLabel() {
    return kind == Kind.CURVE
        ? "depth of the bucket (mean of its wires), mm"
        : "depth by " + scatter.layers().get(0).name().words() + ", mm";
  }

  /** A reading in words. */
  String reading(Layer layer, int row) {
    return kind == Kind.CURVE
        ? words().onCurve(layer.name().wire(), row)
        : words().pair(picture.asked().pair(), row);
  }

  boolean standsOut(Layer layer, Set<String> chosen) {
    return kind == Kind.PAIR || chosen.isEmpty() || chosen.contains(layer.name().words());
  }

  /** Draws readings and curves. */
  void paint(Graphics2D graphics, Rectangle area, Set<String> chosen) {
    CurvePainter curves = new CurvePainter(graphics, area, scatter.grid());
    if (kind == Kind.CURVE) {
      curves.paint(picture.readings(), chosen);
    } else {
      zero(graphics, area);
    }
    CloudPainter clouds = new CloudPainter(graphics, area, scatter.grid());
    for (Layer layer : scatter.layers()) {
      clouds.leftOut(layer.leftOut(), Look.faint(Look.muted(), 0.8));
    }
    for (Layer layer : scatter.layers()) {
      double strength = standsOut(layer, chosen) ? 1 : 0.3;
      clouds.used(
          layer.used(), kind == Kind.CURVE ? Look.wire(layer.name().wire()) : Look.ink(), strength);
    }
    curves.names();
  }

  /** Draws what is selected, over the rest. */
  void paintSelected(Graphics2D graphics, Rectangle area) {
    CloudPainter clouds = new CloudPainter(graphics, area, scatter.grid());
    scatter.layers().forEach(layer -> clouds.selected(layer.selected()));
  }

  private void zero(Graphics2D graphics, Rectangle area) {
    double from = scatter.grid().y().from();
    double share = -from / (scatter.grid().y().to() - from);
    int y = area.y + area.height - (int) Math.round(share * area.height);
    graphics.setColor(Look.muted());
    graphics.setStroke(Look.line());
    graphics.drawLine(area.x, y, area.x + area.width, y);
  }
}
