package org.rimebook.export.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Writes one table, with its head again on every page it reaches. */
final class TableWriter {

  private static final double APART_PT = 9;
  private static final double PAD_PT = 2.2;
  private static final double DENSE_APART_PT = 5;
  private static final int MOST_LINES = 24;

  private final Sheets sheets;
  private final Ink ink;
  private final Table table;
  private final Style style;
  private final Style strong;
  private final double apart;
  private final double[] widths;
  private final PDStructureElement element;

  TableWriter(Sheets sheets, Table table) {
    this.sheets = sheets;
    this.ink = sheets.ink();
    this.table = table;
    this.style = table.dense() ? Style.TINY : Style.CELL;
    this.strong = table.dense() ? Style.TINY_STRONG : Style.CELL_STRONG;
    this.apart = table.dense() ? DENSE_APART_PT : APART_PT;
    double room = sheets.width() - apart * (table.columns().size() - 1);
    this.widths = new TableWidths(ink, style, strong).of(table, room);
    this.element = sheets.tags().add(sheets.tags().document(), StandardStructureTypes.TABLE);
  }

  void write() {
    List<List<String>> head =
        cells(table.columns().stream().map(Table.Column::head).toList(), strong);
    sheets.need(height(head) + 3 * style.leadingPt() + 8);
    head(head, false);
    for (Table.Row row : table.rows()) {
      for (List<List<String>> part : parts(cells(row.cells(), row.sum() ? strong : style))) {
        if (sheets.room() < height(part)) {
          sheets.next();
          head(head, true);
        }
        row(part, row.sum());
      }
    }
    ink.rule(sheets.left(), sheets.top(), wide(), 0.5);
    sheets.down(8);
  }

  private double wide() {
    double sum = apart * (widths.length - 1);
    for (double width : widths) {
      sum += width;
    }
    return sum;
  }

  private List<List<String>> cells(List<String> texts, Style set) {
    List<List<String>> cells = new ArrayList<>();
    for (int c = 0; c < texts.size(); c++) {
      cells.add(ink.lines(set, texts.get(c), widths[c] + 0.05));
    }
    return cells;
  }

  /** A row with more lines than a page should give it, as several. */
  private static List<List<List<String>>> parts(List<List<String>> row) {
    int lines = row.stream().mapToInt(List::size).max().orElse(0);
    List<List<List<String>>> parts = new ArrayList<>();
    for (int from = 0; from < Math.max(1, lines); from += MOST_LINES) {
      int start = from;
      parts.add(
          row.stream()
              .map(
                  cell ->
                      cell.subList(
                          Math.min(start, cell.size()), Math.min(start + MOST_LINES, cell.size())))
              .toList());
    }
    return parts;
  }

  private double height(List<List<String>> row) {
    int lines = row.stream().mapToInt(List::size).max().orElse(1);
    return Math.max(1, lines) * style.leadingPt() + 2 * PAD_PT;
  }

  private void head(List<List<String>> cells, boolean again) {
    double height = height(cells);
    PDStructureElement row = again ? null : sheets.tags().add(element, StandardStructureTypes.TR);
    double x = sheets.left();
    for (int c = 0; c < cells.size(); c++) {
      if (again) {
        ink.beginArtifact();
      } else {
        begin(row, StandardStructureTypes.TH);
      }
      double lift = height - 2 * PAD_PT - cells.get(c).size() * style.leadingPt();
      cell(cells.get(c), c, x, strong, sheets.top() - PAD_PT - lift);
      ink.end();
      x += widths[c] + apart;
    }
    sheets.down(height);
    ink.rule(sheets.left(), sheets.top(), wide(), 0.8);
  }

  private void begin(PDStructureElement row, String type) {
    PDStructureElement cell = sheets.tags().add(row, type);
    if (type.equals(StandardStructureTypes.TH)) {
      PDTableAttributeObject attribute = new PDTableAttributeObject();
      attribute.setScope(PDTableAttributeObject.SCOPE_COLUMN);
      cell.addAttribute(attribute);
    }
    sheets.begin(cell);
  }

  private void row(List<List<String>> cells, boolean sum) {
    if (sum) {
      ink.rule(sheets.left(), sheets.top(), wide(), 0.5);
    }
    PDStructureElement row = sheets.tags().add(element, StandardStructureTypes.TR);
    double x = sheets.left();
    for (int c = 0; c < cells.size(); c++) {
      begin(row, StandardStructureTypes.TD);
      cell(cells.get(c), c, x, sum ? strong : style, sheets.top() - PAD_PT);
      ink.end();
      x += widths[c] + apart;
    }
    sheets.down(height(cells));
  }

  private void cell(List<String> lines, int column, double x, Style set, double top) {
    double baseline = top - set.ascentPt();
    for (String line : lines) {
      double indent =
          table.columns().get(column).figures() ? widths[column] - ink.width(set, line) : 0;
      ink.text(set, x + indent, baseline, line);
      baseline -= set.leadingPt();
    }
  }
}
