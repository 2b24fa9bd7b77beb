package org.rimebook;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.rimebook.command.PlainOpen;
import org.rimebook.command.RimebookCommand;
import org.rimebook.desk.Desk;
import org.rimebook.desk.model.StateFolder;
import org.rimebook.launch.QuickStart;

/** Entry point. */
public final class Rimebook {

  private Rimebook() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] arguments) {
    Optional<Path> season = PlainOpen.season(arguments);
    if (season.isPresent()) {
      OptionalInt ended = QuickStart.open(StateFolder.cache(), season.get());
      if (ended.isPresent()) {
        System.exit(ended.getAsInt());
      }
      if (Desk.open(season)) {
        return;
      }
    }
    int code = RimebookCommand.commandLine(Desk::open).execute(arguments);
    if (code != 0) {
      System.exit(code);
    }
  }
}
