package org.rimebook.desk.table;

import java.awt.FontMetrics;
import java.awt.Graphics;

/** Draws text with digits of one width, so that columns of figures align. */
final class Figures {

  private static final char ELLIPSIS = '…';

  private Figures() {}

  /** Width of a text [px]. */
  static int width(FontMetrics metrics, String text) {
    int digit = digit(metrics);
    int width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += advance(metrics, text.charAt(i), digit);
    }
    return width;
  }

  /** Draws a text from its left end; what doesn't fit into a width ends in an ellipsis. */
  static void draw(Graphics g, String text, int x, int baseline, int most) {
    FontMetrics metrics = g.getFontMetrics();
    int digit = digit(metrics);
    boolean fits = width(metrics, text) <= most;
    int end = x + most - (fits ? 0 : metrics.charWidth(ELLIPSIS));
    int at = x;
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      int advance = advance(metrics, character, digit);
      if (at + advance > end) {
        break;
      }
      int own = metrics.charWidth(character);
      g.drawString(String.valueOf(character), at + (advance - own) / 2, baseline);
      at += advance;
    }
    if (!fits && at > x) {
      g.drawString(String.valueOf(ELLIPSIS), at, baseline);
    }
  }

  /** Draws a text that ends at an x. */
  static void drawTo(Graphics g, String text, int right, int baseline) {
    int width = width(g.getFontMetrics(), text);
    draw(g, text, right - width, baseline, width);
  }

  private static int advance(FontMetrics metrics, char character, int digit) {
    return Character.isDigit(character) ? digit : metrics.charWidth(character);
  }

  private static int digit(FontMetrics metrics) {
    int widest = 0;
    for (char c = '0'; c <= '9'; c++) {
      widest = Math.max(widest, metrics.charWidth(c));
    }
    return widest;
  }
}
