package org.rimebook.desk.bench;

import java.awt.Component;
import java.awt.GridLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellRenderer;

/**
 * The heading of a column, its name above its unit, so that neither is cut off where there is
 * little room. Not by mark-up, which takes a tenth of a second when it first shows.
 */
final class LoadsHead extends JPanel implements TableCellRenderer {

  private static final long serialVersionUID = 1L;

  private final transient TableCellRenderer plain;
  private final JLabel name = new JLabel("", SwingConstants.RIGHT);
  private final JLabel unit = new JLabel("", SwingConstants.RIGHT);

  /**
   * @param plain what headings are drawn by otherwise
   */
  LoadsHead(TableCellRenderer plain) {
    super(new GridLayout(2, 1));
    this.plain = plain;
    add(name);
    add(unit);
  }

  @Override
  @SuppressWarnings("ParameterNumber") // as Swing has it
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    String words = String.valueOf(value);
    int parting = Math.max(0, words.indexOf(" ("));
    name.setText(words.substring(0, parting));
    unit.setText(words.substring(parting).strip());
    Component like = plain.getTableCellRendererComponent(table, "", selected, focused, row, column);
    setBackground(like.getBackground());
    if (like instanceof JComponent dressed) {
      setBorder(dressed.getBorder());
    }
    for (JLabel line : new JLabel[] {name, unit}) {
      line.setFont(like.getFont());
      line.setForeground(like.getForeground());
    }
    return this;
  }
}
