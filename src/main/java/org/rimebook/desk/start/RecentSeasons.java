package org.rimebook.desk.start;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.RecentList;
import org.rimebook.desk.model.RecentList.Known;
import org.rimebook.desk.model.RecentSeason;

/** The seasons that were open: Enter or a double click opens one, Delete takes it off the list. */
final class RecentSeasons extends JList<Known> {

  private static final long serialVersionUID = 1L;

  private final DefaultListModel<Known> known = new DefaultListModel<>();

  RecentSeasons(Consumer<RecentSeason> opened, Consumer<RecentSeason> forgotten) {
    setModel(known);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setCellRenderer(new Row());
    setOpaque(false);
    getAccessibleContext().setAccessibleName("Recent seasons");
    bind("ENTER", opened);
    bind("DELETE", forgotten);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            int index = locationToIndex(event.getPoint());
            boolean on = index >= 0 && getCellBounds(index, index).contains(event.getPoint());
            if (on && event.getClickCount() == 2) {
              opened.accept(known.get(index).season());
            }
          }
        });
  }

  private void bind(String key, Consumer<RecentSeason> deed) {
    getInputMap().put(KeyStroke.getKeyStroke(key), key);
    getActionMap()
        .put(
            key,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                Known chosen = getSelectedValue();
                if (chosen != null) {
                  deed.accept(chosen.season());
                }
              }
            });
  }

  /** Shows a list; the season chosen stays chosen where it is still there, else the first is. */
  void show(RecentList list) {
    Known before = getSelectedValue();
    known.clear();
    list.seasons().forEach(known::addElement);
    int index = 0;
    for (int i = 0; before != null && i < known.size(); i++) {
      if (known.get(i).season().folder().equals(before.season().folder())) {
        index = i;
      }
    }
    if (!known.isEmpty()) {
      setSelectedIndex(index);
    }
  }

  private static final class Row extends JPanel implements ListCellRenderer<Known> {
    private static final long serialVersionUID = 1L;
    private final JLabel name = new JLabel();
    private final JLabel total = new JLabel();
    private final JLabel folder = new JLabel();
    private final JLabel opened = new JLabel();

    Row() {
      super(new BorderLayout());
      JPanel inside =
          new JPanel(new MigLayout("insets 8 12 8 12, gapx 16, gapy 0", "[grow, 0::][right]"));
      inside.add(name, "wmin 0");
      inside.add(total, "wrap");
      inside.add(folder, "wmin 0");
      inside.add(opened);
      inside.setOpaque(false);
      add(inside);
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Known> list, Known known, int index, boolean selected, boolean focused) {
      RecentSeason season = known.season();
      name.setText(season.name());
      folder.setText(season.folder().toString());
      total.setText(season.totalMm().map(mm -> mm.toPlainString() + " mm").orElse(""));
      opened.setText(known.state());
      name.setFont(Look.bold(1.08));
      total.setFont(Look.text(1.08));
      folder.setFont(Look.text(0.92));
      opened.setFont(Look.text(0.92));
      name.setForeground(known.there() ? Look.ink() : Look.muted());
      total.setForeground(known.there() ? Look.ink() : Look.muted());
      folder.setForeground(Look.muted());
      opened.setForeground(known.there() ? Look.muted() : Look.ink());
      setOpaque(selected);
      setBackground(Look.faint(Look.accent(), focused || list.isFocusOwner() ? 0.18 : 0.09));
      getAccessibleContext().setAccessibleName(known.words());
      return this;
    }
  }
}
