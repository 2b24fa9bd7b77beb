package org.rimebook.desk.table;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellRenderer;

/**
 * A heading that stands over its figures.
 *
 * @param usual the theme's own
 * @param figures whether it stands to the right
 */
record Heading(TableCellRenderer usual, boolean figures) implements TableCellRenderer {

  @Override
  @SuppressWarnings("ParameterNumber") // as Swing has it
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    Component shown =
        usual.getTableCellRendererComponent(table, value, selected, focused, row, column);
    if (shown instanceof JLabel label) {
      label.setHorizontalAlignment(figures ? SwingConstants.TRAILING : SwingConstants.LEADING);
    }
    return shown;
  }
}
