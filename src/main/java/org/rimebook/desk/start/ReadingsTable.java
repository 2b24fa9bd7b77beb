package org.rimebook.desk.start;

import java.awt.Component;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.FirstReadings;
import org.rimebook.desk.model.NewSeason;

/** Depth of each wire at the first readings, and how far the wires lie apart. */
final class ReadingsTable extends JTable {

  private static final long serialVersionUID = 1L;
  private static final int ROWS = 5;

  ReadingsTable(NewSeason season) {
    super(new Depths(season));
    getAccessibleContext().setAccessibleName("Depth at the first readings");
    setRowSelectionAllowed(false);
    setFocusable(false);
    getTableHeader().setReorderingAllowed(false);
    align();
    season.readings().watch(this::changed);
  }

  private void changed(FirstReadings readings) {
    Depths depths = (Depths) getModel();
    if (depths.shows(readings)) {
      depths.fireTableDataChanged();
    } else {
      depths.fireTableStructureChanged();
      align();
    }
  }

  private void align() {
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(SwingConstants.RIGHT);
    TableCellRenderer head = getTableHeader().getDefaultRenderer();
    for (int column = 0; column < getColumnCount(); column++) {
      int side = column == 0 ? SwingConstants.LEADING : SwingConstants.RIGHT;
      getColumnModel().getColumn(column).setPreferredWidth(Look.px(column == 0 ? 150 : 80));
      getColumnModel().getColumn(column).setHeaderRenderer(aligned(head, side));
      if (column > 0) {
        getColumnModel().getColumn(column).setCellRenderer(right);
      }
    }
  }

  /** All columns share the header's renderer, so each sets its own side. */
  private static TableCellRenderer aligned(TableCellRenderer head, int side) {
    return (table, value, selected, focused, row, column) -> {
      Component cell =
          head.getTableCellRendererComponent(table, value, selected, focused, row, column);
      if (cell instanceof JLabel label) {
        label.setHorizontalAlignment(side);
      }
      return cell;
    };
  }

  private static final class Depths extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    private final transient NewSeason season;
    private List<String> names = List.of();

    Depths(NewSeason season) {
      this.season = season;
      shows(season.readings().get());
    }

    /** Whether the columns stay as they are. */
    boolean shows(FirstReadings readings) {
      List<String> before = names;
      names = readings.wires().stream().map(FirstReadings.OfWire::name).toList();
      return names.equals(before);
    }

    @Override
    public int getRowCount() {
      return Math.min(ROWS, season.readings().get().times().size());
    }

    @Override
    public int getColumnCount() {
      return names.size() + (names.size() > 1 ? 2 : 1);
    }

    @Override
    public String getColumnName(int column) {
      if (column == 0) {
        return "First readings";
      }
      return column <= names.size() ? names.get(column - 1) + ", mm" : "apart, mm";
    }

    @Override
    public Object getValueAt(int row, int column) {
      FirstReadings readings = season.readings().get();
      if (column == 0) {
        return readings.times().get(row);
      }
      return column <= names.size()
          ? words(readings.depthMm(row, column - 1))
          : words(readings.spreadMm(row));
    }

    private static String words(OptionalDouble mm) {
      return mm.isPresent() ? String.format(Locale.ROOT, "%.1f", mm.getAsDouble()) : "–";
    }
  }
}
