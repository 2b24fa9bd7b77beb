package org.rimebook.desk.table;

import java.awt.Color;
import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.TotalsColumn;
import org.rimebook.desk.model.TotalsRow;

/** Draws one cell: figures to the right, quality as shape and word, changed rows with a mark. */
final class TotalsCell extends DefaultTableCellRenderer {

  private static final TotalsColumn[] COLUMNS = TotalsColumn.values();

  private TotalsRow row;
  private TotalsColumn column;
  private Color ink;

  @Override
  @SuppressWarnings("ParameterNumber") // as Swing has it
  public Component getTableCellRendererComponent(
      JTable table,
      Object value,
      boolean selected,
      boolean focused,
      int rowIndex,
      int columnIndex) {
    super.getTableCellRendererComponent(table, value, selected, false, rowIndex, columnIndex);
    column = COLUMNS[table.convertColumnIndexToModel(columnIndex)];
    row = ((RowsModel) table.getModel()).row(rowIndex);
    boolean dim =
        row.total().catchUnits().isEmpty() || column == TotalsColumn.CATCH && nothingFell();
    ink = selected ? table.getSelectionForeground() : dim ? Look.muted() : Look.ink();
    setFont(row.changed() && column == TotalsColumn.CATCH ? Look.bold(1) : table.getFont());
    if (column == TotalsColumn.START && row.changed()) {
      getAccessibleContext().setAccessibleDescription("changed");
    } else {
      getAccessibleContext().setAccessibleDescription(null);
    }
    return this;
  }

  private boolean nothingFell() {
    return row.total().catchUnits().orElse(1) == 0;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics;
    g.setColor(getBackground());
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setFont(getFont());
    g.setRenderingHints(TextHints.of(this));
    FontMetrics metrics = g.getFontMetrics();
    int baseline = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
    int pad = Look.px(8);
    g.setColor(ink);
    if (column.figures()) {
      Figures.drawTo(g, getText(), getWidth() - pad, baseline);
      return;
    }
    int left = pad;
    if (column == TotalsColumn.START) {
      drawChange(g);
    } else if (column == TotalsColumn.QUALITY) {
      int size = Look.px(10);
      QualityMark.draw(g, row.total().quality(), left, (getHeight() - size) / 2.0, size);
      left += size + Look.px(6);
    }
    Figures.draw(g, getText(), left, baseline, getWidth() - left - Look.px(4));
  }

  /** A wedge at the edge of a row that isn't what it was when totals were settled. */
  private void drawChange(Graphics2D g) {
    if (row.changed()) {
      double size = Look.px(7);
      double middle = getHeight() / 2.0;
      Path2D wedge = new Path2D.Double();
      wedge.moveTo(Look.px(1), middle - size / 2);
      wedge.lineTo(Look.px(1) + size * 0.7, middle);
      wedge.lineTo(Look.px(1), middle + size / 2);
      wedge.closePath();
      Color before = g.getColor();
      g.setColor(Look.accent());
      g.fill(wedge);
      g.setColor(before);
    }
  }
}
