package org.rimebook.export.network;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import org.rimebook.season.Season;
import org.rimebook.station.FileFault;
import org.rimebook.station.Problem;

/**
 * The season folders below a folder.
 *
 * @param seasons every folder that holds a station sheet, by name, code unit by code unit
 * @param problems folders that couldn't be looked into
 */
public record SeasonFolders(List<SeasonFolder> seasons, List<Problem> problems) {

  public SeasonFolders {
    seasons = List.copyOf(seasons);
    problems = List.copyOf(problems);
  }

  /**
   * Finds them. What lies in a season folder, in a hidden folder or in the folder for the tables
   * isn't looked at; links are followed.
   *
   * @param root the folder; one that is a season itself gives that season under its own name
   * @param out the folder for the tables
   * @throws IOException when the folder can't be looked into
   */
  public static SeasonFolders below(Path root, Path out) throws IOException {
    Walk walk = new Walk(root, out.toAbsolutePath().normalize());
    Files.walkFileTree(root, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, walk);
    walk.seasons.sort(Comparator.comparing(SeasonFolder::name));
    return new SeasonFolders(walk.seasons, walk.problems);
  }

  private static final class Walk extends SimpleFileVisitor<Path> {

    private final Path root;
    private final Path out;
    private final List<SeasonFolder> seasons = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    Walk(Path root, Path out) {
      this.root = root;
      this.out = out;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      boolean below = !folder.equals(root);
      if (below && folder.getFileName().toString().startsWith(".")) {
        return FileVisitResult.SKIP_SUBTREE;
      }
      if (Files.isRegularFile(folder.resolve(Season.STATION_FILE))) {
        seasons.add(new SeasonFolder(name(folder), folder));
        return FileVisitResult.SKIP_SUBTREE;
      }
      if (below && folder.toAbsolutePath().normalize().equals(out)) {
        return FileVisitResult.SKIP_SUBTREE;
      }
      return FileVisitResult.CONTINUE;
    }

    private String name(Path folder) {
      if (folder.equals(root)) {
        return folder.toAbsolutePath().normalize().getFileName().toString();
      }
      List<String> names = new ArrayList<>();
      root.relativize(folder).forEach(name -> names.add(name.toString()));
      return String.join("/", names);
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
      if (file.equals(root)) {
        throw e;
      }
      problems.add(
          Problem.inFile(
              file.toString(),
              "can't be looked into (" + FileFault.words(e, file) + ")",
              "Check that you may read it and that no link leads back to itself"));
      return FileVisitResult.CONTINUE;
    }
  }
}
