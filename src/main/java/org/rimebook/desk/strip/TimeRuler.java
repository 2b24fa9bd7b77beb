package org.rimebook.desk.strip;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import org.rimebook.desk.look.Look;
import org.rimebook.station.Interval;

/** The time axis under the strips, and its lines through them. */
final class TimeRuler {

  private final Rectangle plots;
  private final Interval visible;
  private final TimeTicks ticks;
  private final LongToDoubleFunction x;

  TimeRuler(Rectangle plots, Interval visible, ZoneOffset offset) {
    this.plots = plots;
    this.visible = visible;
    this.x = ms -> plots.x + (ms - visible.fromMs()) * (double) plots.width / visible.lengthMs();
    long apartMs = Math.max(1, visible.lengthMs() * Look.px(44) / Math.max(1, plots.width));
    this.ticks = TimeTicks.reading(visible, offset, apartMs);
  }

  /** Draws its lines through a strip. */
  void grid(Graphics2D graphics, Rectangle strip) {
    lines(graphics, strip, ticks.upper(), Look.hairline());
    lines(graphics, strip, ticks.lower(), Emphasis.mixed(Look.muted(), Look.paper(), 0.4));
  }

  private void lines(
      Graphics2D graphics, Rectangle strip, List<TimeTicks.Tick> marks, Color colour) {
    graphics.setColor(colour);
    for (TimeTicks.Tick tick : marks) {
      if (visible.contains(tick.epochMs())) {
        int at = (int) Math.round(x.applyAsDouble(tick.epochMs()));
        graphics.fillRect(at, strip.y, 1, strip.height);
      }
    }
  }

  /** Draws the coarser row alone, and its lines. */
  void months(Graphics2D graphics) {
    graphics.setFont(Look.text(0.85));
    FontMetrics metrics = graphics.getFontMetrics();
    lines(graphics, plots, ticks.lower(), Look.hairline());
    graphics.setColor(Look.muted());
    lower(graphics, metrics, plots.y + plots.height + Look.px(3) + metrics.getAscent());
  }

  /** Draws the two rows under the plots. */
  void paint(Graphics2D graphics) {
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    int top = plots.y + plots.height;
    int upper = top + Look.px(3) + metrics.getAscent();
    graphics.setColor(Look.muted());
    for (TimeTicks.Tick tick : ticks.upper()) {
      int at = (int) Math.round(x.applyAsDouble(tick.epochMs()));
      int width = Numbers.width(metrics, tick.words());
      int left = Math.min(at - width / 2, plots.x + plots.width + StackLayout.right() - width);
      Numbers.draw(graphics, tick.words(), left, upper);
    }
    graphics.setColor(Look.ink());
    lower(graphics, metrics, upper + metrics.getHeight());
  }

  private void lower(Graphics2D graphics, FontMetrics metrics, int y) {
    List<TimeTicks.Tick> row = ticks.lower();
    for (int i = 0; i < row.size(); i++) {
      TimeTicks.Tick tick = row.get(i);
      int from = (int) Math.round(Math.max(plots.x, x.applyAsDouble(tick.epochMs())));
      double next =
          i + 1 < row.size() ? x.applyAsDouble(row.get(i + 1).epochMs()) : plots.getMaxX();
      String words = fitting(metrics, tick.words(), (int) next - from - Look.px(8));
      Numbers.draw(graphics, words, from, y);
      if (visible.contains(tick.epochMs())) {
        graphics.fillRect(from, plots.y + plots.height, 1, Look.px(4));
      }
    }
  }

  /** The words, or as many of them from the left as there is room for. */
  private static String fitting(FontMetrics metrics, String words, int room) {
    String fitting = words;
    while (!fitting.isEmpty() && Numbers.width(metrics, fitting) > room) {
      int space = fitting.lastIndexOf(' ');
      fitting = space < 0 ? "" : fitting.substring(0, space);
    }
    return fitting;
  }
}
