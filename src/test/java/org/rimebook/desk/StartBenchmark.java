package org.rimebook.desk;

import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.rimebook.Rimebook;
import org.rimebook.desk.strip.StripStack;
import org.rimebook.launch.QuickStart;

/**
 * Time from the start of the program to the first picture of a season in the window. Each run is a
 * fresh virtual machine, with the options of this one. Prints the milliseconds and ends. Starts are
 * quicker once the window has been opened and closed; {@code -Drimebook.start=plain} measures what
 * they are without that.
 *
 * <p>{@code java -cp target/rimebook.jar:target/test-classes org.rimebook.desk.StartBenchmark
 * SEASON}
 */
final class StartBenchmark extends Thread {

  private static final int LOOK_EVERY_MS = 5;

  /** No start is so quick that something is drawn before. */
  private static final int FIRST_LOOK_MS = 300;

  private static StripStack stack;

  private final long startMs;

  private StartBenchmark(long startMs) {
    super("looking");
    this.startMs = startMs;
    setDaemon(true);
  }

  /**
   * Starts the program for a season; with the time of that as a second argument, is the program.
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length == 1) {
      System.exit(program(arguments[0]).waitFor());
    }
    // The first of two machines has no window to look at, and should start as for everybody; and
    // so should the second, whose window system mustn't be woken before the program does it.
    if (System.getProperty(QuickStart.PROPERTY) != null) {
      new StartBenchmark(Long.parseLong(arguments[1])).start();
    }
    Rimebook.main(new String[] {"open", arguments[0]});
  }

  private static Process program(String season) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(StartBenchmark.class.getName());
    command.add(season);
    command.add(Long.toString(System.currentTimeMillis()));
    return new ProcessBuilder(command).inheritIO().start();
  }

  @Override
  public void run() {
    try {
      Thread.sleep(FIRST_LOOK_MS);
    } catch (InterruptedException e) {
      return;
    }
    SwingUtilities.invokeLater(this::watch);
  }

  private void watch() {
    new Timer(LOOK_EVERY_MS, event -> look(startMs)).start();
  }

  /**
   * Looks through the window once, then only at the strips: looking must take no time of its own.
   */
  private static void look(long startMs) {
    for (Frame frame : Frame.getFrames()) {
      stack = stack == null ? within(frame) : stack;
    }
    if (stack != null && stack.isDrawn()) {
      long sinceStartMs = System.currentTimeMillis() - startMs;
      PrintWriter out =
          new PrintWriter(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
      out.println(sinceStartMs + " ms to the first picture");
      Runtime.getRuntime().halt(0);
    }
  }

  private static StripStack within(Component component) {
    if (component instanceof StripStack found) {
      return found;
    }
    StripStack found = null;
    if (component instanceof Container container) {
      for (Component part : container.getComponents()) {
        found = found == null ? within(part) : found;
      }
    }
    return found;
  }
}
