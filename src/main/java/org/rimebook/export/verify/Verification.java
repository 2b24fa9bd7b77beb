package org.rimebook.export.verify;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.export.FurtherFile;
import org.rimebook.export.SeasonExport;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;

/**
 * Whether the files in a folder follow from a season folder.
 *
 * @param resolution the resolution they were verified at
 * @param files what was found of each file, the tables first
 * @param changes what changed in the inputs since the tables were made, in words; none when nothing
 *     did
 * @param inputsKnown whether {@code season.json} says what the tables were made from
 */
public record Verification(
    Resolution resolution, List<FileVerdict> files, List<String> changes, boolean inputsKnown) {

  private static final List<String> TABLES =
      List.of(
          SeasonExport.HOURLY, SeasonExport.DAILY, SeasonExport.SUMMARY, SeasonExport.DESCRIPTION);

  public Verification {
    files = List.copyOf(files);
    changes = List.copyOf(changes);
  }

  /** Whether every file that was looked at follows. */
  public boolean follows() {
    return files.stream().noneMatch(FileVerdict::against);
  }

  /** Whether a folder holds any file that could be verified. */
  public static boolean hasTables(Path folder) {
    return TABLES.stream().anyMatch(name -> Files.isRegularFile(folder.resolve(name)));
  }

  /**
   * Computes a season again and compares.
   *
   * @param season the season
   * @param folder where the tables are
   * @param further files the program can make beside the tables; compared where they are there
   * @throws InputException when a calibration can't be used
   * @throws IOException when a file in the folder can't be read
   */
  public static Verification of(Season season, Path folder, List<? extends FurtherFile> further)
      throws InputException, IOException {
    Map<String, byte[]> there = read(folder, further);
    Optional<KeptInputs> kept = KeptInputs.read(text(there, SeasonExport.SUMMARY));
    List<String> changes = new ArrayList<>();
    kept.ifPresent(inputs -> changes.addAll(InputChanges.between(inputs, season)));
    Optional<Resolution> printed = printed(there);
    Optional<Resolution> stated = kept.flatMap(KeptInputs::resolution);
    if (stated.isPresent() && printed.isPresent() && !stated.equals(printed)) {
      changes.add(
          "the resolution: the tables are printed to "
              + printed.get().mm()
              + " mm, season.json says "
              + stated.get().mm()
              + " mm");
    }
    Resolution resolution = stated.or(() -> printed).orElse(Resolution.TENTH);
    SeasonResult result = SeasonResult.of(season);
    List<FileVerdict> verdicts = new ArrayList<>();
    Map<String, String> due = SeasonExport.texts(result, result.totals(resolution));
    for (String name : TABLES) {
      byte[] bytes = due.get(name).getBytes(StandardCharsets.UTF_8);
      verdicts.add(verdict(name, Optional.ofNullable(there.get(name)), bytes));
    }
    for (FurtherFile file : further) {
      if (there.containsKey(file.fileName())) {
        byte[] bytes = file.bytes(result, resolution);
        verdicts.add(verdict(file.fileName(), Optional.of(there.get(file.fileName())), bytes));
      }
    }
    return new Verification(resolution, verdicts, changes, kept.isPresent());
  }

  private static Map<String, byte[]> read(Path folder, List<? extends FurtherFile> further)
      throws IOException {
    List<String> names = new ArrayList<>(TABLES);
    further.forEach(file -> names.add(file.fileName()));
    Map<String, byte[]> there = new LinkedHashMap<>();
    for (String name : names) {
      Path file = folder.resolve(name);
      if (Files.isRegularFile(file)) {
        there.put(name, Files.readAllBytes(file));
      }
    }
    return there;
  }

  private static String text(Map<String, byte[]> there, String name) {
    return new String(there.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
  }

  /** The resolution the tables are printed at, by the first total in them. */
  private static Optional<Resolution> printed(Map<String, byte[]> there) {
    return PrintedResolution.of(text(there, SeasonExport.DAILY))
        .or(() -> PrintedResolution.of(text(there, SeasonExport.HOURLY)));
  }

  private static FileVerdict verdict(String name, Optional<byte[]> there, byte[] due) {
    if (there.isEmpty()) {
      return new FileVerdict(name, FileVerdict.Outcome.ABSENT, "");
    }
    int at = Arrays.mismatch(there.get(), due);
    if (at < 0) {
      return new FileVerdict(name, FileVerdict.Outcome.FOLLOWS, "");
    }
    boolean table = name.endsWith(".csv");
    boolean lines = table || name.endsWith(".json") || name.endsWith(".xml");
    String says = new String(there.get(), StandardCharsets.UTF_8);
    String gives = new String(due, StandardCharsets.UTF_8);
    String words =
        lines && !says.equals(gives)
            ? FirstDifference.words(table, says, gives)
            : "byte " + (at + 1) + " is the first to differ";
    return new FileVerdict(name, FileVerdict.Outcome.DIFFERS, words);
  }
}
