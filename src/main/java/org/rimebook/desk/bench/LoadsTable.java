package org.rimebook.desk.bench;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.ActionEvent;
import java.io.IOException;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import javax.swing.text.DefaultEditorKit;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.bench.CalibrationForm;
import org.rimebook.desk.model.bench.CalibrationForm.Source;
import org.rimebook.desk.model.bench.Loads;
import org.rimebook.desk.model.bench.Loads.Column;

/** Check weights and frequencies, to be typed or pasted. */
final class LoadsTable extends JTable {

  private static final long serialVersionUID = 1L;

  private final transient CalibrationForm form;

  LoadsTable(CalibrationForm form) {
    super(new Rows(form));
    this.form = form;
    getAccessibleContext().setAccessibleName("Check weights and frequencies");
    getAccessibleContext()
        .setAccessibleDescription("Ctrl+V pastes two columns, Ctrl+Tab leaves the table");
    putClientProperty("terminateEditOnFocusLost", true);
    setSurrendersFocusOnKeystroke(true);
    setCellSelectionEnabled(true);
    getTableHeader().setReorderingAllowed(false);
    getInputMap().put(KeyStroke.getKeyStroke("control V"), "paste lines");
    getActionMap()
        .put(
            "paste lines",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                paste();
              }
            });
    dress();
  }

  private void dress() {
    TableCellRenderer head = getTableHeader().getDefaultRenderer();
    DefaultTableCellRenderer numbers = new DefaultTableCellRenderer();
    numbers.setHorizontalAlignment(SwingConstants.RIGHT);
    for (int column = 0; column < getColumnCount(); column++) {
      getColumnModel().getColumn(column).setHeaderRenderer(new LoadsHead(head));
      getColumnModel().getColumn(column).setCellRenderer(numbers);
      getColumnModel().getColumn(column).setCellEditor(new Selecting(this::pasteInto));
    }
    measure();
  }

  /** Gives columns the width they need at the scale in force. */
  private void measure() {
    getColumnModel().getColumn(0).setMaxWidth(Look.px(36));
    getColumnModel().getColumn(0).setPreferredWidth(Look.px(36));
    getColumnModel().getColumn(1).setPreferredWidth(Look.px(70));
    getColumnModel().getColumn(2).setPreferredWidth(Look.px(92));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (form != null) {
      measure();
    }
  }

  /** The numbers of the rows are passed over, forwards and backwards. */
  @Override
  public void changeSelection(int row, int column, boolean toggle, boolean extend) {
    boolean back = column == 0 && getSelectedRow() == row && getSelectedColumn() == 1;
    if (back) {
      super.changeSelection(Math.floorMod(row - 1, getRowCount()), 2, toggle, extend);
    } else {
      super.changeSelection(row, Math.max(1, column), toggle, extend);
    }
  }

  void addRow() {
    stop();
    form.loads().add();
    int last = getRowCount() - 1;
    changeSelection(last, 1, false, false);
    requestFocusInWindow();
  }

  void removeRows() {
    stop();
    if (getSelectedRowCount() > 0) {
      form.loads().remove(getSelectedRows());
    }
  }

  void paste() {
    stop();
    if (form.loads().paste(clipboard(), Math.max(0, getSelectedRow())) == 0) {
      getToolkit().beep();
    }
  }

  /** The text of the clipboard; empty when there is none, or while another program holds it. */
  private static String clipboard() {
    try {
      return Toolkit.getDefaultToolkit()
          .getSystemClipboard()
          .getData(DataFlavor.stringFlavor)
          .toString();
    } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
      return "";
    }
  }

  /** Into a cell that is being typed in goes a number; rows go where rows belong. */
  private void pasteInto(JTextField cell) {
    String text = clipboard();
    if (text.strip().matches("\\S*")) {
      cell.replaceSelection(text.strip());
    } else {
      getCellEditor().cancelCellEditing();
      paste();
    }
  }

  private void stop() {
    if (isEditing()) {
      getCellEditor().stopCellEditing();
    }
  }

  /** Shows the rows as they are now. */
  void tell() {
    ((Rows) getModel()).tell();
    String load = Rows.head(form, 1);
    if (!load.equals(getColumnModel().getColumn(1).getHeaderValue())) {
      getColumnModel().getColumn(1).setHeaderValue(load);
      getTableHeader().repaint();
    }
  }

  private static final class Rows extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    private final transient CalibrationForm form;
    private int rows;

    Rows(CalibrationForm form) {
      this.form = form;
      this.rows = form.loads().size();
    }

    static String head(CalibrationForm form, int column) {
      return switch (column) {
        case 0 -> "";
        case 1 -> form.source() == Source.WATER ? "Water (L)" : "Mass (kg)";
        default -> "Frequency (Hz)";
      };
    }

    /** Rows that stay are painted anew; a cell being typed into isn't disturbed. */
    void tell() {
      int now = form.loads().size();
      if (now != rows) {
        rows = now;
        fireTableDataChanged();
      } else {
        fireTableRowsUpdated(0, rows - 1);
      }
    }

    @Override
    public int getRowCount() {
      return rows;
    }

    @Override
    public int getColumnCount() {
      return 3;
    }

    @Override
    public String getColumnName(int column) {
      return head(form, column);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return column > 0;
    }

    @Override
    public Object getValueAt(int row, int column) {
      Loads loads = form.loads();
      if (row >= loads.size()) {
        return "";
      }
      if (column == 0) {
        return (row + 1) + (loads.fault(row).isPresent() ? " !" : "");
      }
      return loads.text(row, column == 1 ? Column.LOAD : Column.FREQUENCY);
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
      if (row < form.loads().size()) {
        form.loads().type(row, column == 1 ? Column.LOAD : Column.FREQUENCY, value.toString());
      }
    }
  }

  /** What is typed into a cell replaces what was there. */
  private static final class Selecting extends DefaultCellEditor {
    private static final long serialVersionUID = 1L;

    Selecting(Consumer<JTextField> paste) {
      super(new JTextField());
      JTextField field = (JTextField) getComponent();
      field.setHorizontalAlignment(SwingConstants.RIGHT);
      field
          .getActionMap()
          .put(
              DefaultEditorKit.pasteAction,
              new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                  paste.accept(field);
                }
              });
    }

    @Override
    public Component getTableCellEditorComponent(
        JTable table, Object value, boolean selected, int row, int column) {
      Component field = super.getTableCellEditorComponent(table, value, selected, row, column);
      ((JTextField) field).selectAll();
      return field;
    }
  }
}
