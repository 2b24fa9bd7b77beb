package org.rimebook.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The command line most windows are opened by, {@code open SEASON} and no more. It is understood
 * without the parser of command lines, whose making takes a noticeable part of the start; anything
 * else is left to it.
 */
public final class PlainOpen {

  private PlainOpen() {}

  /** The season folder; empty when the arguments say anything else or more. */
  public static Optional<Path> season(String... arguments) {
    boolean plain = arguments.length == 2 && arguments[0].equals("open");
    // The parser takes what begins with these for an option and for a file of arguments.
    if (!plain || arguments[1].startsWith("-") || arguments[1].startsWith("@")) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(arguments[1]));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
