package org.rimebook.command;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the window; given by the entry point, since no command knows the desk. */
@FunctionalInterface
public interface WindowOpener {

  /**
   * Opens the window and returns once it is closed.
   *
   * @param season the season folder to open; empty for the start page
   * @return false when there is no screen to open it on
   */
  boolean open(Optional<Path> season);
}
