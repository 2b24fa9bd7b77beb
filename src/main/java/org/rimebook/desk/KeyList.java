package org.rimebook.desk;

import java.awt.Dimension;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.act.Keys;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;

/** The list of keys, group by group. */
final class KeyList {

  private KeyList() {}

  static void show(JFrame window, ActionBook book) {
    ReadingDialog.show(window, "Keys", content(book), new Dimension(880, 640));
  }

  static JPanel content(ActionBook book) {
    JPanel panel =
        new Sheet(
            new MigLayout("wrap 3, fillx, insets 16 24 16 24, gapy 4", "[]16[]16[grow, fill]"));
    for (Group group : Group.values()) {
      panel.add(title(group.words()), "span, gaptop 12, gapbottom 4");
      book.of(group).stream().filter(a -> a.key() != null).forEach(a -> addRow(panel, a));
    }
    panel.add(title("Mouse"), "span, gaptop 12, gapbottom 4");
    addRow(panel, "Drag", "Mark an interval", "with Shift another one");
    addRow(panel, "Wheel", "Zoom about the pointer", "with Shift move in time");
    addRow(panel, "Middle drag", "Move in time", "or drag with Space held");
    addRow(panel, "Ctrl+drag", "Zoom into a box", "");
    return panel;
  }

  private static JLabel title(String words) {
    return Words.label(words, () -> Look.bold(1.1), Look::ink);
  }

  private static void addRow(JPanel panel, DeskAction action) {
    addRow(panel, Keys.words(action.key()), action.name(), action.description());
  }

  private static void addRow(JPanel panel, String key, String name, String description) {
    JLabel keyLabel = Words.label(key, () -> Look.bold(1), Look::ink);
    JTextArea about = Words.text(description, () -> Look.text(1), Look::muted);
    about.getAccessibleContext().setAccessibleName(name);
    panel.add(keyLabel, "gapleft 16, top");
    panel.add(new JLabel(name), "top");
    panel.add(about, "top, wmin 0");
  }
}
