package org.rimebook.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import javax.swing.SwingUtilities;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.Workspace;

/** Catches what nothing else caught: it is told in the window and written to a file, whole. */
final class FaultNet implements Thread.UncaughtExceptionHandler {

  private final Workspace workspace;
  private final Path log;
  private final Clock clock;

  FaultNet(Workspace workspace, Path log, Clock clock) {
    this.workspace = workspace;
    this.log = log;
    this.clock = clock;
  }

  void install() {
    Thread.setDefaultUncaughtExceptionHandler(this);
  }

  @Override
  public void uncaughtException(Thread thread, Throwable fault) {
    String words =
        "Something went wrong inside the program ("
            + Faults.words(fault)
            + "). Nothing you entered is lost. "
            + keep(thread, fault);
    SwingUtilities.invokeLater(
        () -> workspace.notice().set(new Notice(Notice.Weight.FAULT, words)));
  }

  private String keep(Thread thread, Throwable fault) {
    StringWriter text = new StringWriter();
    text.write(clock.instant() + " in thread " + thread.getName() + "\n");
    fault.printStackTrace(new PrintWriter(text, true));
    try {
      Files.createDirectories(log.getParent());
      Files.writeString(
          log,
          text.toString(),
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
      return "The details are in " + log;
    } catch (IOException e) {
      return "The details couldn't be written to " + log + ": " + text;
    }
  }
}
