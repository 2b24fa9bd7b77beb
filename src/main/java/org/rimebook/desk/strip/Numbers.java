package org.rimebook.desk.strip;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;

/** Numbers with fixed decimals, and figures that all take the same room. */
final class Numbers {

  private static final String MINUS = "\u2212";

  private Numbers() {}

  /** A format with so many decimals, a point, and a true minus sign. */
  static NumberFormat format(int decimals) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    DecimalFormat format = new DecimalFormat("0", symbols);
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    format.setNegativePrefix(MINUS);
    return format;
  }

  /** A number with so many decimals. */
  static String fixed(double value, int decimals) {
    String text = format(decimals).format(value);
    return text.startsWith(MINUS) && text.chars().noneMatch(c -> c > '0' && c <= '9')
        ? text.substring(1)
        : text;
  }

  /** The width of a text whose figures all take the same room. */
  static int width(FontMetrics metrics, String text) {
    int figure = metrics.charWidth('0');
    int width = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      width += Character.isDigit(c) ? figure : metrics.charWidth(c);
    }
    return width;
  }

  /** Draws a text whose figures all take the same room. */
  static void draw(Graphics2D graphics, String text, int x, int y) {
    FontMetrics metrics = graphics.getFontMetrics();
    int figure = metrics.charWidth('0');
    int at = x;
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isDigit(c)) {
        at = flush(graphics, words, at, y);
        graphics.drawString(String.valueOf(c), at + (figure - metrics.charWidth(c)) / 2, y);
        at += figure;
      } else {
        words.append(c);
      }
    }
    flush(graphics, words, at, y);
  }

  private static int flush(Graphics2D graphics, StringBuilder words, int x, int y) {
    if (words.length() == 0) {
      return x;
    }
    graphics.drawString(words.toString(), x, y);
    int width = width(graphics.getFontMetrics(), words.toString());
    words.setLength(0);
    return x + width;
  }
}
