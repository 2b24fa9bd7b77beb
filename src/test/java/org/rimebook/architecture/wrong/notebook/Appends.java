package org.rimebook.architecture.wrong.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes where writing is allowed. */
public final class Appends {

  private Appends() {}

  /** Appends one line. */
  public static void line(Path notebook) throws IOException {
    Files.writeString(notebook, "entry\n", StandardOpenOption.APPEND);
  }
}
