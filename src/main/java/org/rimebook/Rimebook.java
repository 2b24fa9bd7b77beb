package org.rimebook;

import org.rimebook.command.RimebookCommand;
import org.rimebook.desk.Desk;

/** Entry point. */
public final class Rimebook {

  private Rimebook() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] arguments) {
    int code = RimebookCommand.commandLine(Desk::open).execute(arguments);
    if (code != 0) {
      System.exit(code);
    }
  }
}
