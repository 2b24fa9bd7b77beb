package org.rimebook.desk.table;

import java.awt.BorderLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.Drawer;
import org.rimebook.desk.model.Selection;
import org.rimebook.desk.model.TotalsChoice;
import org.rimebook.desk.model.TotalsList;
import org.rimebook.desk.model.TotalsRow;
import org.rimebook.desk.model.TotalsScale;
import org.rimebook.desk.model.Workspace;

/** The totals of the season, hour by hour, day by day or month by month. */
public final class TotalsTable extends JPanel {

  private final Workspace workspace;
  private final TotalsList list;
  private final RowsModel rows;
  private final RowsTable table;
  private final DeskAction why;
  private final DeskAction copy;
  private boolean following;

  /**
   * @param workspace whose totals are shown, and whose selection is shared
   */
  public TotalsTable(Workspace workspace) {
    super(new BorderLayout());
    this.workspace = workspace;
    this.list = new TotalsList(workspace);
    this.rows = new RowsModel(list.text());
    this.table = new RowsTable(rows, list::hint);
    this.why =
        DeskAction.named(Group.TOTALS, "Why this total", this::ask)
            .saying("Shows the readings, wires and entries behind the total")
            .key("W")
            .mnemonic('W')
            .when(() -> table.getSelectedRow() >= 0)
            .done();
    this.copy =
        DeskAction.named(Group.TOTALS, "Copy rows", this::copy)
            .saying("Copies the rows selected, or all shown, as tab-separated text with a header")
            .key("control C")
            .mnemonic('C')
            .when(() -> table.getRowCount() > 0)
            .done();
    table.setRowSorter(new ChoiceSorter(rows, list.choice()));
    JScrollPane scroll = new JScrollPane(table);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setVerticalScrollBarPolicy(ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS);
    add(new TotalsBar(workspace, list), BorderLayout.NORTH);
    add(scroll, BorderLayout.CENTER);
    bind();
    list.shown().follow(shown -> show(shown.rows()));
    workspace.selection().follow(this::follow);
    table
        .getSelectionModel()
        .addListSelectionListener(event -> picked(event.getValueIsAdjusting()));
  }

  /** Commands of the table. */
  public List<DeskAction> actions() {
    return List.of(
        DeskAction.named(Group.TOTALS, "Totals table", this::toggle)
            .saying("Opens or closes the table under the strips")
            .key("control T")
            .mnemonic('T')
            .done(),
        why,
        copy,
        DeskAction.named(Group.TOTALS, "With catch only", this::toggleCatch)
            .saying("Shows all rows of the table, or those with catch")
            .mnemonic('O')
            .done(),
        scale("Hourly totals", 'H', TotalsScale.HOURLY),
        scale("Daily totals", 'D', TotalsScale.DAILY),
        scale("Monthly totals", 'M', TotalsScale.MONTHLY));
  }

  private DeskAction scale(String name, char mnemonic, TotalsScale scale) {
    return DeskAction.named(
            Group.TOTALS,
            name,
            () -> {
              list.choice().set(list.choice().get().at(scale));
              workspace.drawer().set(Drawer.TOTALS);
            })
        .mnemonic(mnemonic)
        .done();
  }

  private void toggle() {
    boolean open = workspace.drawer().get() == Drawer.TOTALS;
    workspace.drawer().set(open ? Drawer.CLOSED : Drawer.TOTALS);
    if (!open) {
      table.requestFocusInWindow();
    }
  }

  private void toggleCatch() {
    TotalsChoice now = list.choice().get();
    list.choice().set(now.withCatch(!now.withCatch()));
  }

  private void bind() {
    act("copy", copy);
    key("ENTER", "why", why);
    key("W", "why", why);
    JPopupMenu menu = new JPopupMenu();
    menu.add(why);
    menu.add(copy);
    table.setComponentPopupMenu(menu);
    table.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2 && table.rowAtPoint(event.getPoint()) >= 0) {
              ask();
            }
          }
        });
  }

  private void key(String stroke, String name, DeskAction action) {
    table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), name);
    act(name, action);
  }

  /** A key of the table, which holds though the action is only refreshed by its menu. */
  private void act(String name, DeskAction action) {
    table
        .getActionMap()
        .put(
            name,
            new AbstractAction(name) {
              @Override
              public void actionPerformed(ActionEvent event) {
                action.actionPerformed(event);
              }
            });
  }

  private void ask() {
    int row = table.getSelectionModel().getLeadSelectionIndex();
    int asked = table.isRowSelected(row) ? row : table.getSelectedRow();
    if (asked >= 0) {
      list.ask(rows.row(asked));
    }
  }

  private void copy() {
    List<TotalsRow> picked = picked();
    String text = rows.text().tsv(picked.isEmpty() ? rows.rows() : picked);
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
  }

  private List<TotalsRow> picked() {
    return Arrays.stream(table.getSelectedRows()).mapToObj(rows::row).toList();
  }

  private void picked(boolean adjusting) {
    if (following || adjusting) {
      return;
    }
    following = true;
    list.select(picked());
    following = false;
    refresh();
  }

  private void refresh() {
    why.refresh();
    copy.refresh();
  }

  /** Shows rows; what is in view and what is selected stays so. */
  private void show(List<TotalsRow> shown) {
    int top = table.topRow();
    Optional<TotalsRow> anchor =
        top < 0 || top >= rows.getRowCount() ? Optional.empty() : Optional.of(rows.row(top));
    int offset = top < 0 ? 0 : table.offset(top);
    if (showInPlace(shown)) {
      return;
    }
    mark(workspace.selection().get());
    anchor.ifPresent(row -> anchor(row, offset));
    refresh();
  }

  /** Rows put elsewhere lose their marks in the table, but what is selected stays selected. */
  private boolean showInPlace(List<TotalsRow> shown) {
    boolean before = following;
    following = true;
    boolean inPlace = rows.show(shown, list.text());
    following = before;
    return inPlace;
  }

  private void anchor(TotalsRow row, int offset) {
    for (int i = 0; i < rows.getRowCount(); i++) {
      if (rows.row(i).total().interval().equals(row.total().interval())) {
        table.anchor(i, offset);
        return;
      }
    }
  }

  /** Marks what is selected elsewhere, and goes there. */
  private void follow(Selection selection) {
    if (following) {
      return;
    }
    int first = mark(selection);
    if (first >= 0) {
      table.reveal(first);
    }
    refresh();
  }

  private int mark(Selection selection) {
    List<Integer> selected = list.selected(selection);
    following = true;
    table.getSelectionModel().setValueIsAdjusting(true);
    table.clearSelection();
    for (int from = 0, to; from < selected.size(); from = to) {
      for (to = from + 1; to < selected.size(); to++) {
        if (selected.get(to) != selected.get(to - 1) + 1) {
          break;
        }
      }
      table.addRowSelectionInterval(selected.get(from), selected.get(to - 1));
    }
    table.getSelectionModel().setValueIsAdjusting(false);
    following = false;
    return selected.isEmpty() ? -1 : selected.get(0);
  }
}
