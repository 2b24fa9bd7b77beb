package org.rimebook.launch;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * A program that starts as the window does. It says in which machine it came to run, and either
 * ends with a code or waits to be ended.
 */
final class StartedProgram {

  static final String WAIT = "wait";

  private StartedProgram() {}

  /** Takes the folder for stored classes, the season, and an exit code or {@value #WAIT}. */
  public static void main(String[] arguments) throws InterruptedException {
    OptionalInt ended = QuickStart.open(Path.of(arguments[0]), Path.of(arguments[1]));
    if (ended.isPresent()) {
      System.exit(ended.getAsInt());
    }
    PrintWriter out =
        new PrintWriter(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
    out.println(ProcessHandle.current().pid());
    out.println(ManagementFactory.getRuntimeMXBean().getInputArguments());
    out.println("whole");
    if (arguments[2].equals(WAIT)) {
      Thread.currentThread().join();
    }
    System.exit(Integer.parseInt(arguments[2]));
  }
}
