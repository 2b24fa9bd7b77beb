package org.rimebook.desk;

import java.nio.file.Path;
import java.util.Optional;

final class MainWindow {
  private MainWindow() {}

  static void show(Optional<Path> season, Runnable closed) {
    closed.run();
  }
}
