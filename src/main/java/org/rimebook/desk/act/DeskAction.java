package org.rimebook.desk.act;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.event.ActionEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/**
 * One command of the workspace: its name, key, what it does, and when it can be done. Menus,
 * buttons, keys and the list of keys all use the same action.
 */
public final class DeskAction extends AbstractAction {

  private final Group group;
  private final BooleanSupplier possible;
  private final Runnable deed;

  private DeskAction(Builder builder) {
    super(builder.name);
    this.group = builder.group;
    this.possible = builder.possible;
    this.deed = builder.deed;
    putValue(Action.SHORT_DESCRIPTION, builder.description);
    putValue(Action.ACCELERATOR_KEY, builder.key);
    if (builder.mnemonic != 0) {
      putValue(Action.MNEMONIC_KEY, (int) builder.mnemonic);
    }
    refresh();
  }

  /**
   * Starts an action.
   *
   * @param group the menu it stands in
   * @param name its name, sentence case
   * @param deed what it does, on the event thread
   */
  public static Builder named(Group group, String name, Runnable deed) {
    return new Builder(group, name, deed);
  }

  /**
   * Whether a key or button may do it now: not while its key is a character being typed or is meant
   * for an open menu.
   */
  @Override
  public boolean accept(Object sender) {
    AWTEvent event = EventQueue.getCurrentEvent();
    return possible.getAsBoolean() && !Typing.isUnderWay(event) && !Typing.isForMenu(event);
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    // A menu item doesn't ask accept() when its key is pressed.
    if (accept(this)) {
      deed.run();
    }
  }

  /** Enables or disables it by whether it can be done now. */
  public void refresh() {
    setEnabled(possible.getAsBoolean());
  }

  /** Its key; null when it has none. */
  public KeyStroke key() {
    return (KeyStroke) getValue(Action.ACCELERATOR_KEY);
  }

  /** The menu it stands in. */
  public Group group() {
    return group;
  }

  /** Its name. */
  public String name() {
    return (String) getValue(Action.NAME);
  }

  /** What it does, in a sentence; may be empty. */
  public String description() {
    return (String) getValue(Action.SHORT_DESCRIPTION);
  }

  /** Collects what an action is made of. */
  public static final class Builder {
    private final Group group;
    private final String name;
    private final Runnable deed;
    private String description = "";
    private KeyStroke key;
    private char mnemonic;
    private BooleanSupplier possible = () -> true;

    private Builder(Group group, String name, Runnable deed) {
      this.group = group;
      this.name = name;
      this.deed = deed;
    }

    /** What it does, in a sentence. */
    public Builder saying(String sentence) {
      description = sentence;
      return this;
    }

    /** Its key, as {@link KeyStroke#getKeyStroke(String)} reads it, for example "control Z". */
    public Builder key(String stroke) {
      key = KeyStroke.getKeyStroke(stroke);
      if (key == null) {
        throw new IllegalArgumentException("no such key: " + stroke);
      }
      return this;
    }

    /** The letter of its name that chooses it in an open menu, in upper case. */
    public Builder mnemonic(char letter) {
      mnemonic = letter;
      return this;
    }

    /** When it can be done. */
    public Builder when(BooleanSupplier condition) {
      possible = condition;
      return this;
    }

    /** The action. */
    public DeskAction done() {
      return new DeskAction(this);
    }
  }
}
