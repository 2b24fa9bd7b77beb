package org.rimebook.desk;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.act.Keys;
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
    JTextArea about = new Description(description);
    about.setEditable(false);
    about.setFocusable(false);
    about.setLineWrap(true);
    about.setWrapStyleWord(true);
    about.setOpaque(false);
    about.setBorder(BorderFactory.createEmptyBorder());
    about.setForeground(Look.muted());
    about.getAccessibleContext().setAccessibleName(name);
    panel.add(keyLabel, "gapleft 16, top");
    panel.add(new JLabel(name), "top");
    panel.add(about, "top, wmin 0");
  }

  /** Words that wrap, whose caret doesn't scroll the list to them. */
  private static final class Description extends JTextArea {
    private static final long serialVersionUID = 1;

    Description(String words) {
      super(words);
    }

    @Override
    public void scrollRectToVisible(Rectangle place) {
      // the list is scrolled by its reader alone
    }
  }
}
