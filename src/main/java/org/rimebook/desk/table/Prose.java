package org.rimebook.desk.table;

import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import org.rimebook.desk.look.Look;

/** Words that wrap, to be read and copied but not changed. */
final class Prose extends JTextArea {

  private final boolean quiet;

  private Prose(String words, boolean quiet) {
    super(words);
    this.quiet = quiet;
    setForeground(quiet ? Look.muted() : Look.ink());
    setEditable(false);
    setFocusable(false);
    setOpaque(false);
    setLineWrap(true);
    setWrapStyleWord(true);
  }

  static Prose of(String words) {
    return new Prose(words, false);
  }

  /** Words that aren't data. */
  static Prose quiet(String words) {
    return new Prose(words, true);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createEmptyBorder());
    setMargin(new Insets(0, 0, 0, 0));
    setFont(Look.text(1));
    setForeground(quiet ? Look.muted() : Look.ink());
  }
}
