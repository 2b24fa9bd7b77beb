package org.rimebook.desk.table;

import java.awt.Cursor;
import java.awt.Insets;
import javax.swing.JButton;
import javax.swing.SwingConstants;
import org.rimebook.desk.look.Look;

/** Words that lead somewhere, by mouse and keyboard. */
final class Link extends JButton {

  private Link(String words, String where) {
    super(words);
    setToolTipText(where);
    setHorizontalAlignment(SwingConstants.LEADING);
    setMargin(new Insets(0, 0, 0, 0));
    putClientProperty("JButton.buttonType", "borderless");
    setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
  }

  /**
   * @param words what is read
   * @param where where it leads, for its tooltip
   * @param deed goes there
   */
  static Link to(String words, String where, Runnable deed) {
    Link link = new Link(words, where);
    link.addActionListener(event -> deed.run());
    return link;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setForeground(Look.accent());
  }
}
