package org.rimebook.desk.table;

import java.util.List;
import javax.swing.RowSorter;
import javax.swing.SortOrder;
import org.rimebook.desk.model.TotalsChoice;
import org.rimebook.desk.model.TotalsColumn;
import org.rimebook.desk.model.Watched;

/**
 * Lets the header order the rows, by mouse and keyboard, though the rows come in their order
 * already: rows of the table are rows of its model.
 */
final class ChoiceSorter extends RowSorter<RowsModel> {

  private final RowsModel model;
  private final Watched<TotalsChoice> choice;

  ChoiceSorter(RowsModel model, Watched<TotalsChoice> choice) {
    this.model = model;
    this.choice = choice;
    choice.watch(chosen -> fireSortOrderChanged());
  }

  @Override
  public RowsModel getModel() {
    return model;
  }

  @Override
  public void toggleSortOrder(int column) {
    choice.set(choice.get().by(TotalsColumn.values()[column]));
  }

  @Override
  public List<? extends SortKey> getSortKeys() {
    SortOrder order = choice.get().descending() ? SortOrder.DESCENDING : SortOrder.ASCENDING;
    return List.of(new SortKey(choice.get().column().ordinal(), order));
  }

  @Override
  public void setSortKeys(List<? extends SortKey> keys) {
    if (keys != null && !keys.isEmpty()) {
      SortKey key = keys.get(0);
      TotalsChoice by = choice.get().by(TotalsColumn.values()[key.getColumn()]);
      boolean descending = key.getSortOrder() == SortOrder.DESCENDING;
      choice.set(by.descending() == descending ? by : by.by(by.column()));
    }
  }

  @Override
  public int convertRowIndexToModel(int index) {
    return index;
  }

  @Override
  public int convertRowIndexToView(int index) {
    return index;
  }

  @Override
  public int getViewRowCount() {
    return model.getRowCount();
  }

  @Override
  public int getModelRowCount() {
    return model.getRowCount();
  }

  @Override
  public void modelStructureChanged() {}

  @Override
  public void allRowsChanged() {}

  @Override
  public void rowsInserted(int firstRow, int endRow) {}

  @Override
  public void rowsDeleted(int firstRow, int endRow) {}

  @Override
  public void rowsUpdated(int firstRow, int endRow) {}

  @Override
  public void rowsUpdated(int firstRow, int endRow, int column) {}
}
