package org.rimebook.command;

/** Exit codes of every command. */
final class ExitCode {

  static final int DONE = 0;

  /** The season opened, but something asked for couldn't be made. */
  static final int NOT_MADE = 1;

  /** The command was used wrongly. */
  static final int WRONG_USE = 2;

  /** The season can't be read. */
  static final int UNREADABLE = 3;

  private ExitCode() {}
}
