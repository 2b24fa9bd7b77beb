package org.rimebook.launch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Opens the window in a second virtual machine, with what a program file can't ask for itself: the
 * classes as an earlier start stored them and, for a season of common size, the quick compiler
 * alone. The first machine waits for it and passes its end on. Whatever stands against a second
 * machine, the window opens in the first.
 */
public final class QuickStart {

  /** System property: anything but nothing stands against a second machine. */
  public static final String PROPERTY = "rimebook.start";

  /** What the property is in the second machine. */
  public static final String SECOND = "second";

  /**
   * Up to that size of the record [bytes, unpacked] the thorough compiler takes more from the first
   * picture than it gives back soon; beyond, the season's totals need it. Own choice.
   */
  private static final long COMMON_BYTES = 32_000_000;

  /**
   * What reads a line. In one piece the thorough compiler takes over a tenth of a second for it,
   * and several times, since the end of a file is new to it; meanwhile the lines are read by slow
   * code. In these pieces it takes some hundredths.
   */
  static final List<String> COMPILED_APART =
      List.of(
          "NumberReader::quick",
          "CivilStamp::isoMs",
          "RowHandler::handleField",
          "RowHandler::buildRecord");

  /** A packed logger file holds about so many times its size, as those of the sample seasons do. */
  private static final int PACKED = 6;

  private QuickStart() {}

  /**
   * Opens the window in a second machine and waits until it is closed.
   *
   * @param folder where stored classes are kept
   * @param season the season folder to open
   * @return exit code; empty when the window is to be opened here
   */
  public static OptionalInt open(Path folder, Path season) {
    String stated = System.getProperty(PROPERTY, "");
    if (stated.equals(SECOND)) {
      endWithTheFirst();
    }
    String separator = System.getProperty("path.separator");
    String program = System.getProperty("java.class.path", "").split(separator)[0];
    // Where there is no season only half of the window's classes would come to be stored.
    boolean worth = program.endsWith(".jar") && Files.exists(season.resolve("station.json"));
    if (!stated.isEmpty() || !worth) {
      return OptionalInt.empty();
    }
    try {
      String machine = System.getProperty("java.home") + System.getProperty("java.vm.version");
      return run(StoredClasses.of(folder, Path.of(program), machine), season);
    } catch (IOException e) {
      // A folder that can't be written or a process that can't be started: only slower without.
      return OptionalInt.empty();
    }
  }

  private static OptionalInt run(StoredClasses classes, Path season) throws IOException {
    Optional<List<String>> command =
        SecondMachine.command(
            ProcessHandle.current().info(),
            environment("JAVA_TOOL_OPTIONS") + environment("JDK_JAVA_OPTIONS"),
            options(classes, season));
    if (command.isEmpty()) {
      return OptionalInt.empty();
    }
    Process second = new ProcessBuilder(command.get()).inheritIO().start();
    Runtime.getRuntime().addShutdownHook(new Thread(second::destroy));
    int code = end(second);
    if (code == 0) {
      classes.keep();
    } else {
      classes.drop();
    }
    return OptionalInt.of(code);
  }

  private static List<String> options(StoredClasses classes, Path season) throws IOException {
    List<String> options = new ArrayList<>();
    options.add("-D" + PROPERTY + "=" + SECOND);
    options.add("-XX:+IgnoreUnrecognizedVMOptions");
    // That a class can't be stored, or what is stored has aged, is nothing to tell anybody.
    options.add("-Xlog:cds*=off");
    options.add(
        classes.present()
            ? "-XX:SharedArchiveFile=" + classes.file()
            : "-XX:ArchiveClassesAtExit=" + classes.part());
    if (bytes(season.resolve("records")) <= COMMON_BYTES) {
      options.add("-XX:TieredStopAtLevel=1");
    } else {
      options.add("-XX:CompileCommand=quiet");
      for (String method : COMPILED_APART) {
        options.add("-XX:CompileCommand=dontinline,org.rimebook.record." + method);
      }
    }
    return options;
  }

  /** Bytes of the files in a folder, unpacked; roughly. None where there is no such folder. */
  private static long bytes(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return 0;
    }
    long bytes = 0;
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        bytes += Files.size(file) * (file.toString().endsWith(".gz") ? PACKED : 1);
      }
    }
    return bytes;
  }

  private static String environment(String name) {
    String value = System.getenv(name);
    return value == null ? "" : value;
  }

  private static int end(Process second) {
    while (true) {
      try {
        return second.waitFor();
      } catch (InterruptedException e) {
        second.destroy();
      }
    }
  }

  /** The window goes when the program that stands for it is ended from outside. */
  private static void endWithTheFirst() {
    ProcessHandle.current()
        .parent()
        .ifPresent(first -> first.onExit().thenRun(() -> Runtime.getRuntime().exit(1)));
  }
}
