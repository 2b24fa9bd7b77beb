package org.rimebook.desk.table;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import org.rimebook.desk.model.TotalsColumn;
import org.rimebook.desk.model.TotalsRow;
import org.rimebook.desk.model.TotalsText;

/** The rows as a table asks for them; columns are never made anew. */
final class RowsModel extends AbstractTableModel {

  private static final TotalsColumn[] COLUMNS = TotalsColumn.values();

  private List<TotalsRow> rows = List.of();
  private TotalsText text;

  RowsModel(TotalsText text) {
    this.text = text;
  }

  /** Shows other rows; tells whether each stands where it stood. */
  boolean show(List<TotalsRow> shown, TotalsText newText) {
    boolean inPlace = samePlaces(rows, shown);
    rows = shown;
    text = newText;
    if (!inPlace) {
      fireTableDataChanged();
    } else if (!rows.isEmpty()) {
      fireTableRowsUpdated(0, rows.size() - 1);
    }
    return inPlace;
  }

  private static boolean samePlaces(List<TotalsRow> before, List<TotalsRow> after) {
    if (before.size() != after.size()) {
      return false;
    }
    for (int i = 0; i < before.size(); i++) {
      if (!before.get(i).total().interval().equals(after.get(i).total().interval())) {
        return false;
      }
    }
    return true;
  }

  List<TotalsRow> rows() {
    return rows;
  }

  TotalsRow row(int index) {
    return rows.get(index);
  }

  TotalsText text() {
    return text;
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.length;
  }

  @Override
  public String getColumnName(int column) {
    return COLUMNS[column].words();
  }

  @Override
  public String getValueAt(int row, int column) {
    return text.cell(rows.get(row), COLUMNS[column]);
  }
}
