package org.rimebook.export.report;

import java.util.Arrays;
import java.util.List;
import org.rimebook.export.figure.Glyphs;

/** How wide the columns of a table are: as wide as they need to be, words giving way to figures. */
final class TableWidths {

  private static final double NARROW_PT = 46;
  private static final double WIDE_PT = 400;

  private final Ink ink;
  private final Style style;
  private final Style strong;

  TableWidths(Ink ink, Style style, Style strong) {
    this.ink = ink;
    this.style = style;
    this.strong = strong;
  }

  /**
   * Widths of the columns [pt].
   *
   * @param table the table
   * @param room what they have together, without the room between them [pt]
   */
  double[] of(Table table, double room) {
    double[] widths = wanted(table, room);
    if (table.dense()) {
      even(table, widths, room);
    }
    return widths;
  }

  /** Makes the columns of figures alike, over the whole room. */
  private static void even(Table table, double[] widths, double room) {
    double words = 0;
    int figures = 0;
    for (int c = 0; c < widths.length; c++) {
      figures += table.columns().get(c).figures() ? 1 : 0;
      words += table.columns().get(c).figures() ? 0 : widths[c];
    }
    for (int c = 0; c < widths.length; c++) {
      widths[c] = table.columns().get(c).figures() ? (room - words) / figures : widths[c];
    }
  }

  private double[] wanted(Table table, double room) {
    int count = table.columns().size();
    double[] natural = new double[count];
    double[] least = new double[count];
    for (int c = 0; c < count; c++) {
      measure(table, c, natural, least);
    }
    double all = Arrays.stream(natural).sum();
    if (all <= room) {
      return natural;
    }
    double fixed = 0;
    double flexible = 0;
    for (int c = 0; c < count; c++) {
      fixed += least[c];
      flexible += natural[c] - least[c];
    }
    double share = flexible > 0 ? Math.max(0, room - fixed) / flexible : 0;
    double[] widths = new double[count];
    for (int c = 0; c < count; c++) {
      widths[c] = least[c] + share * (natural[c] - least[c]);
    }
    double over = Arrays.stream(widths).sum() / room;
    return over > 1 ? Arrays.stream(widths).map(w -> w / over).toArray() : widths;
  }

  private void measure(Table table, int c, double[] natural, double[] least) {
    Table.Column column = table.columns().get(c);
    for (String word : List.of(column.head().split(" "))) {
      least[c] = Math.max(least[c], ink.width(strong, Glyphs.visible(word)));
    }
    natural[c] = column.figures() ? least[c] : ink.width(strong, Glyphs.visible(column.head()));
    double longest = 0;
    for (Table.Row row : table.rows()) {
      String cell = Glyphs.visible(row.cells().get(c));
      natural[c] = Math.max(natural[c], ink.width(row.sum() ? strong : style, cell));
      for (String word : cell.split(" ")) {
        longest = Math.max(longest, ink.width(style, word));
      }
    }
    natural[c] = Math.min(WIDE_PT, natural[c]) + 0.1;
    least[c] =
        column.figures()
            ? natural[c]
            : Math.min(natural[c], Math.max(least[c], Math.min(2 * NARROW_PT, longest) + 0.1));
  }
}
