package org.rimebook.desk;

import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.act.Keys;
import org.rimebook.desk.look.Look;

/** The list of keys, group by group. */
final class KeyList {

  private KeyList() {}

  static void show(JFrame window, ActionBook book) {
    JDialog dialog = new JDialog(window, "Keys", false);
    JScrollPane scroll = new JScrollPane(content(book));
    scroll.setBorder(null);
    scroll.getVerticalScrollBar().setUnitIncrement(Look.px(24));
    scroll.setPreferredSize(new Dimension(Look.px(720), Look.px(560)));
    dialog.setContentPane(scroll);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.pack();
    dialog.setLocationRelativeTo(window);
    dialog.setVisible(true);
  }

  static JPanel content(ActionBook book) {
    JPanel panel =
        new JPanel(new MigLayout("wrap 3, insets 16 24 16 24, gapy 4", "[]16[]16[grow]"));
    for (Group group : Group.values()) {
      JLabel title = new JLabel(group.words());
      title.setFont(Look.bold(1.1));
      panel.add(title, "span, gaptop 12, gapbottom 4");
      book.of(group).stream().filter(a -> a.key() != null).forEach(a -> addRow(panel, a));
    }
    JLabel mouse = new JLabel("Mouse");
    mouse.setFont(Look.bold(1.1));
    panel.add(mouse, "span, gaptop 12, gapbottom 4");
    addRow(panel, "Drag", "Mark an interval", "with Shift another one");
    addRow(panel, "Wheel", "Zoom about the pointer", "with Shift move in time");
    addRow(panel, "Middle drag", "Move in time", "or drag with Space held");
    addRow(panel, "Ctrl+drag", "Zoom into a box", "");
    return panel;
  }

  private static void addRow(JPanel panel, DeskAction action) {
    addRow(panel, Keys.words(action.key()), action.name(), action.description());
  }

  private static void addRow(JPanel panel, String key, String name, String description) {
    JLabel keyLabel = new JLabel(key);
    keyLabel.setFont(Look.bold(1));
    JLabel about = new JLabel(description);
    about.setForeground(Look.muted());
    panel.add(keyLabel, "gapleft 16");
    panel.add(new JLabel(name));
    panel.add(about);
  }
}
