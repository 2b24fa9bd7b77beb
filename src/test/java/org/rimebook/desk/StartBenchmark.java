package org.rimebook.desk;

import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.rimebook.Rimebook;
import org.rimebook.desk.strip.StripStack;

/**
 * Time from the start of the virtual machine to the first picture of a season in the window. Each
 * run is a fresh machine; the launch of the process itself, some ten milliseconds, isn't in it.
 * Prints the milliseconds and ends.
 *
 * <p>{@code java -cp target/rimebook.jar:target/test-classes org.rimebook.desk.StartBenchmark
 * SEASON}
 */
final class StartBenchmark {

  private static final int LOOK_EVERY_MS = 5;

  private static StripStack stack;

  private StartBenchmark() {}

  public static void main(String[] arguments) {
    SwingUtilities.invokeLater(StartBenchmark::watch);
    Rimebook.main(new String[] {"open", arguments[0]});
  }

  private static void watch() {
    new Timer(LOOK_EVERY_MS, event -> look()).start();
  }

  /**
   * Looks through the window once, then only at the strips: looking must take no time of its own.
   */
  private static void look() {
    for (Frame frame : Frame.getFrames()) {
      stack = stack == null ? within(frame) : stack;
    }
    if (stack != null && stack.isDrawn()) {
      long sinceStartMs =
          System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
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
