package org.rimebook.desk.table;

import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.TotalsColumn;

/** The table itself: its columns, what it says when it is empty, and more about a row on hover. */
final class RowsTable extends JTable {

  private final RowsModel rows;
  private final Supplier<String> hint;

  RowsTable(RowsModel rows, Supplier<String> hint) {
    super(rows);
    this.rows = rows;
    this.hint = hint;
    setDefaultRenderer(Object.class, new TotalsCell());
    setFillsViewportHeight(true);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    getSelectionModel().setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
    getTableHeader().setReorderingAllowed(false);
    getAccessibleContext().setAccessibleName("Totals");
    TableCellRenderer heading = getTableHeader().getDefaultRenderer();
    for (TotalsColumn column : TotalsColumn.values()) {
      TableColumn shown = getColumnModel().getColumn(column.ordinal());
      shown.setHeaderRenderer(new Heading(heading, column.figures()));
    }
    measure();
  }

  /** Gives columns the width they need at the scale in force. */
  private void measure() {
    for (TotalsColumn column : TotalsColumn.values()) {
      TableColumn shown = getColumnModel().getColumn(column.ordinal());
      shown.setMinWidth(shrinks(column) ? least(column) : width(column));
      shown.setPreferredWidth(width(column));
      shown.setWidth(width(column));
    }
  }

  /** Width at which the heading is whole; beside figures, with the mark of the order. */
  private int least(TotalsColumn column) {
    // the header itself is dressed anew only after the table
    FontMetrics metrics = getTableHeader().getFontMetrics(Look.text(1));
    return metrics.stringWidth(getColumnName(column.ordinal()))
        + Look.px(shrinks(column) ? 20 : 28);
  }

  /** Width of a column; times are never cut, at whatever scale the type is drawn. */
  private int width(TotalsColumn column) {
    int text =
        switch (column) {
          case START, SINCE ->
              Figures.width(getFontMetrics(getFont()), "2024-12-28 08:00") + Look.px(20);
          case CATCH -> Look.px(92);
          case COMPLETE -> Look.px(96);
          case UNCERTAINTY -> Look.px(72);
          case QUALITY -> Look.px(98);
          case WIRES, REASONS -> Look.px(144);
          case ADJUSTED -> Look.px(104);
          case PHASE -> Look.px(64);
        };
    return Math.max(text, least(column));
  }

  /** Words may be cut, as hovering shows them whole; figures never. */
  private static boolean shrinks(TotalsColumn column) {
    return column == TotalsColumn.WIRES
        || column == TotalsColumn.SINCE
        || column == TotalsColumn.REASONS;
  }

  /** As wide as what it scrolls in, unless figures would be cut. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() != null && getParent().getWidth() >= getMinimumSize().width;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBackground(Look.paper());
    if (hint != null) {
      measure();
    }
  }

  /** Brings a row into view, in the upper third unless it is there already. */
  void reveal(int row) {
    if (!getVisibleRect().contains(getCellRect(row, 0, true))) {
      anchor(row, -getVisibleRect().height / 3);
    }
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    if (row < 0) {
      return null;
    }
    List<String> lines = new ArrayList<>();
    int column = columnAtPoint(event.getPoint());
    if (column >= 0 && shrinks(TotalsColumn.values()[column])) {
      lines.add(rows.getValueAt(row, column));
    }
    lines.addAll(rows.text().more(rows.row(row)));
    lines.removeIf(String::isEmpty);
    return lines.isEmpty() ? null : Html.lines(lines);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (getRowCount() > 0) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics;
    g.setRenderingHints(TextHints.of(this));
    g.setFont(getFont());
    g.setColor(Look.muted());
    FontMetrics metrics = g.getFontMetrics();
    String words = hint.get();
    g.drawString(words, Math.max(0, getWidth() - metrics.stringWidth(words)) / 2, Look.px(32));
  }

  /** The row at the top of what is in view; none when there is no row. */
  int topRow() {
    return rowAtPoint(new Point(0, viewY()));
  }

  /** How far a row is above the top of what is in view [px]. */
  int offset(int row) {
    return viewY() - getCellRect(row, 0, true).y;
  }

  /** Scrolls so that a row stands as far above the top as given. */
  void anchor(int row, int offset) {
    if (SwingUtilities.getAncestorOfClass(JViewport.class, this) instanceof JViewport view) {
      int most = Math.max(0, getRowCount() * getRowHeight() - view.getExtentSize().height);
      int y = getCellRect(row, 0, true).y + offset;
      view.setViewPosition(new Point(view.getViewPosition().x, Math.max(0, Math.min(most, y))));
    }
  }

  private int viewY() {
    return SwingUtilities.getAncestorOfClass(JViewport.class, this) instanceof JViewport view
        ? view.getViewPosition().y
        : 0;
  }
}
