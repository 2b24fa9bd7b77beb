package org.rimebook.desk.strip;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.rimebook.desk.look.Look;

/** The line at the instant under the pointer, its time, and the readings of every strip there. */
final class CrossHair {

  private static final DateTimeFormatter TO_MINUTE =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu HH:mm", Locale.UK);
  private static final DateTimeFormatter TO_SECOND =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu HH:mm:ss", Locale.UK);

  private final Graphics2D graphics;
  private final long atMs;
  private final int x;

  CrossHair(Graphics2D graphics, long atMs, int x) {
    this.graphics = graphics;
    this.atMs = atMs;
    this.x = x;
  }

  /** Draws the line through a strip and the strip's readings at its top right. */
  void paint(Rectangle area, StripPlot strip, Emphasis emphasis) {
    graphics.setColor(Look.muted());
    graphics.fillRect(x, area.y, 1, area.height);
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    List<Content.Reading> readings = strip.content().at(atMs);
    int gap = Look.px(14);
    int width = -gap;
    for (Content.Reading reading : readings) {
      width += gap + width(metrics, reading);
    }
    int left = area.x + area.width - width - Look.px(6);
    int top = area.y + Look.px(3);
    graphics.setColor(Look.faint(Look.paper(), 0.86));
    graphics.fillRect(left - Look.px(4), top, width + Look.px(8), metrics.getHeight());
    int at = left;
    for (Content.Reading reading : readings) {
      graphics.setColor(Look.muted());
      int base = top + metrics.getAscent();
      if (!reading.name().isEmpty()) {
        graphics.setColor(emphasis.of(reading.name(), reading.wire()));
        graphics.drawString(reading.name() + " ", at, base);
      }
      graphics.setColor(Look.ink());
      Numbers.draw(graphics, reading.words(), at + nameWidth(metrics, reading), base);
      at += width(metrics, reading) + gap;
    }
  }

  /** Draws the time under the line. */
  void time(Rectangle plots, ZoneOffset offset, boolean seconds) {
    String words = words(atMs, offset, seconds);
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    int width = Numbers.width(metrics, words) + Look.px(12);
    int left = Math.max(plots.x, Math.min(plots.x + plots.width - width, x - width / 2));
    int top = plots.y + plots.height + Look.px(1);
    graphics.setColor(Look.ink());
    graphics.fillRect(left, top, width, metrics.getHeight() + Look.px(2));
    graphics.setColor(Look.paper());
    Numbers.draw(graphics, words, left + Look.px(6), top + Look.px(1) + metrics.getAscent());
  }

  /** An instant in station time, as it stands under the cross-hair. */
  static String words(long epochMs, ZoneOffset offset, boolean seconds) {
    return (seconds ? TO_SECOND : TO_MINUTE).format(Instant.ofEpochMilli(epochMs).atOffset(offset));
  }

  private static int nameWidth(FontMetrics metrics, Content.Reading reading) {
    return reading.name().isEmpty() ? 0 : metrics.stringWidth(reading.name() + " ");
  }

  private static int width(FontMetrics metrics, Content.Reading reading) {
    return nameWidth(metrics, reading) + Numbers.width(metrics, reading.words());
  }
}
