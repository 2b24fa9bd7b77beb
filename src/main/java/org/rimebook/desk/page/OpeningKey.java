package org.rimebook.desk.page;

import java.awt.AWTEvent;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;

/**
 * Keeps the letter of the key that opens a form out of it: the key moves the cursor into the form
 * before its letter is delivered, and the letter isn't text. It is the next key event there is.
 */
final class OpeningKey implements KeyEventDispatcher {

  private final KeyboardFocusManager keys;
  private final char letter;

  private OpeningKey(KeyboardFocusManager keys, char letter) {
    this.keys = keys;
    this.letter = letter;
  }

  /**
   * Waits for the letter of a key, if it is one with which a form is opened.
   *
   * @param opening what the form was opened by; null when by no event
   * @param keys delivers keys
   */
  static void swallow(AWTEvent opening, KeyboardFocusManager keys) {
    if (opening instanceof KeyEvent key
        && key.getID() == KeyEvent.KEY_PRESSED
        && key.getKeyChar() != KeyEvent.CHAR_UNDEFINED) {
      keys.addKeyEventDispatcher(new OpeningKey(keys, key.getKeyChar()));
    }
  }

  @Override
  public boolean dispatchKeyEvent(KeyEvent event) {
    keys.removeKeyEventDispatcher(this);
    return event.getID() == KeyEvent.KEY_TYPED && event.getKeyChar() == letter;
  }
}
