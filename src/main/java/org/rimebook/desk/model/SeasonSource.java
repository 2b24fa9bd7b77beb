package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rimebook.record.RecordPreview;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/**
 * Logger files a new season is to be made of.
 *
 * @param preview what they show
 * @param copies the files to copy into the season folder; empty when they lie in it already
 * @param folder the season folder proposed
 */
public record SeasonSource(RecordPreview preview, List<Path> copies, Path folder) {

  public SeasonSource {
    copies = List.copyOf(copies);
  }

  /**
   * Looks at a folder, or at logger files; reads their first lines only.
   *
   * @param given one folder, or files
   * @throws InputException when no record is found in them, saying what is there instead
   */
  public static SeasonSource of(List<Path> given) throws InputException {
    List<Path> paths = given.stream().map(path -> path.toAbsolutePath().normalize()).toList();
    try {
      if (paths.size() == 1 && Files.isDirectory(paths.get(0))) {
        return new SeasonSource(RecordPreview.of(paths.get(0)), List.of(), paths.get(0));
      }
      refuseOdd(paths);
      return new SeasonSource(RecordPreview.ofFiles(paths), paths, proposed(paths.get(0)));
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              paths.get(0).toString(),
              "can't be read (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ")",
              "Check that it is there and that you may read it"));
    }
  }

  private static void refuseOdd(List<Path> paths) throws InputException {
    Set<Path> names = new HashSet<>();
    for (Path path : paths) {
      if (Files.isDirectory(path)) {
        throw new InputException(
            Problem.inFile(path.toString(), "is a folder", "Give one folder, or files only"));
      }
      if (!names.add(path.getFileName())) {
        throw new InputException(
            Problem.inFile(
                path.toString(),
                "has the name of another of the files",
                "Give each a name of its own; they are copied into one folder"));
      }
    }
  }

  /** A folder that isn't there yet, beside the first file and named after it. */
  private static Path proposed(Path file) {
    String name = file.getFileName().toString();
    int dot = name.indexOf('.', 1);
    String stem = dot < 0 ? name + "-season" : name.substring(0, dot);
    Path folder = file.resolveSibling(stem);
    for (int number = 2; Files.exists(folder); number++) {
      folder = file.resolveSibling(stem + "-" + number);
    }
    return folder;
  }
}
