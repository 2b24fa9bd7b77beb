package org.rimebook.desk.table;

import java.awt.Insets;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import org.rimebook.desk.look.Look;

/** Words that wrap, to be read and copied but not changed. */
public final class Prose extends JTextArea {

  private enum Tone {
    PLAIN,
    QUIET,
    TITLE
  }

  private final Tone tone;

  private Prose(String words, Tone tone) {
    super(words);
    this.tone = tone;
    dress();
    setEditable(false);
    setFocusable(false);
    setOpaque(false);
    setLineWrap(true);
    setWrapStyleWord(true);
  }

  static Prose of(String words) {
    return new Prose(words, Tone.PLAIN);
  }

  /** Words that aren't data. */
  public static Prose quiet(String words) {
    return new Prose(words, Tone.QUIET);
  }

  /** What a page is about. */
  static Prose title() {
    return new Prose(" ", Tone.TITLE);
  }

  /** A page scrolls where its reader scrolls it, not to the cursor of each piece of words. */
  @Override
  public void scrollRectToVisible(Rectangle place) {
    // stays where it is
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createEmptyBorder());
    setMargin(new Insets(0, 0, 0, 0));
    dress();
  }

  private void dress() {
    setFont(tone == Tone.TITLE ? Look.bold(1.15) : Look.text(1));
    setForeground(tone == Tone.QUIET ? Look.muted() : Look.ink());
  }
}
