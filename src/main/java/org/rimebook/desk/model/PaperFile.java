package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.rimebook.export.OutputFolder;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/** Files that papers are saved as. */
public final class PaperFile {

  private PaperFile() {}

  /** Why a paper can't be saved as a file, and what to do; empty when it can. */
  public static Optional<String> obstacle(Workspace workspace, Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      return Optional.of("The name of a paper ends in .pdf");
    }
    Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    return ExportModel.obstacle(workspace, folder);
  }

  /**
   * Writes a file, whole or not at all.
   *
   * @return the file
   * @throws InputException when it can't be written
   */
  public static Path write(Path file, byte[] bytes) throws InputException {
    try {
      OutputFolder.write(file, bytes);
      return file;
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              file.toString(),
              "can't be written (" + e.getMessage() + ")",
              "Choose another file; nothing was left half-written"));
    }
  }
}
