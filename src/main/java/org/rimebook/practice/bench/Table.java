package org.rimebook.practice.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** A Markdown table with columns padded so that it reads as plain text too. */
public final class Table {

  private final List<String[]> rows = new ArrayList<>();

  public Table(String... head) {
    rows.add(head.clone());
  }

  public void add(String... cells) {
    if (cells.length != rows.get(0).length) {
      throw new IllegalArgumentException(
          cells.length + " cells under " + rows.get(0).length + " heads");
    }
    rows.add(cells.clone());
  }

  /** A number with so many decimals; an en dash for NaN. */
  public static String number(double value, int decimals) {
    return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /** The same, with its sign. */
  public static String signed(double value, int decimals) {
    return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%+." + decimals + "f", value);
  }

  /** The lines, the first column to the left and the others to the right. */
  public List<String> lines() {
    int columns = rows.get(0).length;
    int[] width = new int[columns];
    for (String[] row : rows) {
      for (int column = 0; column < columns; column++) {
        width[column] = Math.max(width[column], row[column].length());
      }
    }
    List<String> lines = new ArrayList<>();
    for (String[] row : rows) {
      lines.add(line(row, width));
    }
    String[] rule = new String[columns];
    Arrays.setAll(rule, c -> "-".repeat(Math.max(2, width[c] - 1)) + (c == 0 ? "-" : ":"));
    lines.add(1, line(rule, width));
    return Collections.unmodifiableList(lines);
  }

  private static String line(String[] cells, int[] width) {
    StringBuilder line = new StringBuilder("|");
    for (int column = 0; column < cells.length; column++) {
      String padding = " ".repeat(Math.max(0, width[column] - cells[column].length()));
      line.append(' ')
          .append(column == 0 ? cells[column] + padding : padding + cells[column])
          .append(" |");
    }
    return line.toString();
  }
}
