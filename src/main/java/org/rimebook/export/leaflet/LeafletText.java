package org.rimebook.export.leaflet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.export.report.Table;

/** A leaflet as lines for a terminal; blanks are for paper and left out. */
public final class LeafletText {

  private static final int APART = 2;

  private LeafletText() {}

  /** The lines. */
  public static List<String> lines(Leaflet leaflet) {
    List<String> lines = new ArrayList<>();
    lines.add(leaflet.title() + ": " + leaflet.station());
    for (Leaflet.Part part : leaflet.parts()) {
      if (part instanceof Leaflet.Heading heading) {
        lines.add("");
        lines.add(heading.words());
      } else if (part instanceof Leaflet.Words words) {
        lines.add("  " + words.words());
      } else if (part instanceof Leaflet.Fine fine) {
        lines.add("  " + fine.words());
      } else if (part instanceof Leaflet.Step step) {
        lines.add((step.done() ? "  x " : "  - ") + step.words());
      } else if (part instanceof Leaflet.Caution caution) {
        lines.add("  Caution: " + caution.words());
      } else if (part instanceof Leaflet.Grid grid) {
        lines.addAll(table(grid.table()));
      }
    }
    return lines;
  }

  private static List<String> table(Table table) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(table.columns().stream().map(Table.Column::head).toList());
    table.rows().forEach(row -> rows.add(row.cells()));
    int[] widths =
        IntStream.range(0, table.columns().size())
            .map(c -> rows.stream().mapToInt(row -> row.get(c).length()).max().orElse(0))
            .toArray();
    return rows.stream().map(row -> line(table, row, widths)).toList();
  }

  private static String line(Table table, List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder("  ");
    for (int column = 0; column < widths.length; column++) {
      String cell = cells.get(column);
      String pad = " ".repeat(widths[column] - cell.length());
      line.append(table.columns().get(column).figures() ? pad + cell : cell + pad)
          .append(" ".repeat(APART));
    }
    return line.toString().stripTrailing();
  }
}
