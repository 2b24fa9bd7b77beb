package org.rimebook.desk.table;

import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.rimebook.desk.look.Look;

/**
 * A short table of things to go to: a click or Enter goes there.
 *
 * @param <T> what a row is about
 */
final class PlainTable<T> extends JTable {

  private final Rows<T> rows;
  private final List<Part<T>> parts;
  private final String hint;

  /**
   * A column.
   *
   * @param heading its heading, with the unit
   * @param width width at 100 % [px]
   * @param figures whether it stands right-aligned
   * @param text what stands in it
   */
  record Part<T>(String heading, int width, boolean figures, Function<T, String> text) {}

  /**
   * @param parts the columns
   * @param hint what it says when it is empty
   * @param visit goes to a row
   */
  PlainTable(List<Part<T>> parts, String hint, Consumer<T> visit) {
    super(new Rows<>(parts));
    @SuppressWarnings("unchecked")
    Rows<T> own = (Rows<T>) getModel();
    this.rows = own;
    this.parts = parts;
    this.hint = hint;
    setFillsViewportHeight(true);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    getTableHeader().setReorderingAllowed(false);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    TableCellRenderer heading = getTableHeader().getDefaultRenderer();
    for (int i = 0; i < parts.size(); i++) {
      getColumnModel().getColumn(i).setCellRenderer(new Cell(parts.get(i).figures()));
      getColumnModel().getColumn(i).setHeaderRenderer(new Heading(heading, parts.get(i).figures()));
    }
    measure();
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "visit");
    getActionMap()
        .put(
            "visit",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                chosen().ifPresent(visit);
              }
            });
    addMouseListener(
        new java.awt.event.MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            if (rowAtPoint(event.getPoint()) >= 0) {
              chosen().ifPresent(visit);
            }
          }
        });
  }

  /** Gives columns the width they need at the scale in force. */
  private void measure() {
    for (int i = 0; i < parts.size(); i++) {
      int width = Look.px(parts.get(i).width());
      getColumnModel().getColumn(i).setMinWidth(parts.get(i).figures() ? width : width / 2);
      getColumnModel().getColumn(i).setPreferredWidth(width);
    }
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
    if (parts != null) {
      measure();
    }
  }

  /** Shows these rows; the same one stays chosen where it is still there. */
  void show(List<T> shown) {
    if (shown.equals(rows.rows)) {
      return;
    }
    Optional<T> before = chosen();
    rows.rows = shown;
    rows.fireTableDataChanged();
    int row = before.map(shown::indexOf).orElse(-1);
    if (row >= 0) {
      setRowSelectionInterval(row, row);
    }
  }

  Optional<T> chosen() {
    int row = getSelectedRow();
    return row < 0 ? Optional.empty() : Optional.of(rows.rows.get(row));
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    int column = columnAtPoint(event.getPoint());
    boolean inside = row >= 0 && column >= 0;
    String text = inside ? rows.getValueAt(row, column) : "";
    return text.isEmpty() ? null : Html.lines(List.of(text));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (getRowCount() == 0) {
      Graphics2D g = (Graphics2D) graphics;
      g.setRenderingHints(TextHints.of(this));
      g.setFont(getFont());
      g.setColor(Look.muted());
      g.drawString(hint, Look.px(8), Look.px(24));
    }
  }

  private static final class Rows<T> extends AbstractTableModel {
    private final List<Part<T>> parts;
    private List<T> rows = List.of();

    Rows(List<Part<T>> parts) {
      this.parts = parts;
    }

    @Override
    public int getRowCount() {
      return rows.size();
    }

    @Override
    public int getColumnCount() {
      return parts.size();
    }

    @Override
    public String getColumnName(int column) {
      return parts.get(column).heading();
    }

    @Override
    public String getValueAt(int row, int column) {
      return parts.get(column).text().apply(rows.get(row));
    }
  }

  private static final class Cell extends DefaultTableCellRenderer {
    private final boolean figures;

    Cell(boolean figures) {
      this.figures = figures;
    }

    @Override
    @SuppressWarnings("ParameterNumber") // as Swing has it
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean selected, boolean focused, int row, int column) {
      return super.getTableCellRendererComponent(table, value, selected, false, row, column);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D g = (Graphics2D) graphics;
      g.setColor(getBackground());
      g.fillRect(0, 0, getWidth(), getHeight());
      g.setFont(getFont());
      g.setRenderingHints(TextHints.of(this));
      g.setColor(getForeground());
      FontMetrics metrics = g.getFontMetrics();
      int baseline = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
      int pad = Look.px(8);
      if (figures) {
        Figures.drawTo(g, getText(), getWidth() - pad, baseline);
      } else {
        Figures.draw(g, getText(), pad, baseline, getWidth() - pad);
      }
    }
  }
}
