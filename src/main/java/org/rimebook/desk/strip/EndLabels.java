package org.rimebook.desk.strip;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;

/** Names at the ends of the lines of all strips, moved apart where they would overlap. */
final class EndLabels {

  private static final String ELLIPSIS = "…";

  private final List<Placed> placed = new ArrayList<>();

  /** A name and where it stands. */
  private record Placed(Content.Label label, Rectangle place) {}

  void clear() {
    placed.clear();
  }

  /** Places and draws the names of one strip. */
  void paint(Graphics2D graphics, Rectangle area, StripPlot strip, Emphasis emphasis) {
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    int height = metrics.getAscent() + metrics.getDescent();
    List<Content.Label> labels = new ArrayList<>(strip.content().ends());
    labels.sort(Comparator.comparingDouble(Content.Label::value).reversed());
    Extent range = strip.range();
    int free = area.y;
    for (int i = 0; i < labels.size(); i++) {
      Content.Label label = labels.get(i);
      double share = (label.value() - range.least()) / (range.most() - range.least());
      int wanted = (int) Math.round(area.y + area.height * (1 - share)) - height / 2;
      int lowest = area.y + area.height - (labels.size() - i) * height;
      int top = Math.max(free, Math.min(lowest, wanted));
      int x = area.x + area.width + Look.px(6);
      graphics.setColor(emphasis.of(label.name(), label.wire()));
      String name = shortened(metrics, label.name());
      graphics.drawString(name, x, top + metrics.getAscent());
      placed.add(new Placed(label, new Rectangle(x, top, StackLayout.right(), height)));
      free = top + height;
    }
  }

  /** The wire whose name stands at a point. */
  Optional<String> wireAt(Point point) {
    return placed.stream()
        .filter(p -> p.label().wire() >= 0 && p.place().contains(point))
        .map(p -> p.label().name())
        .findFirst();
  }

  /** A name as far as there is room for it, and a sign that it goes on. */
  private static String shortened(FontMetrics metrics, String name) {
    int room = StackLayout.right() - Look.px(8);
    if (metrics.stringWidth(name) <= room) {
      return name;
    }
    int end = name.length() - 1;
    while (end > 1 && metrics.stringWidth(name.substring(0, end) + ELLIPSIS) > room) {
      end--;
    }
    return name.substring(0, end) + ELLIPSIS;
  }
}
