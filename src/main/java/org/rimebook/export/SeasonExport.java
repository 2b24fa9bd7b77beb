package org.rimebook.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.Totals;

/** The tables of a season with their summary and description. */
public final class SeasonExport {

  static final String HOURLY = "hourly.csv";
  static final String DAILY = "daily.csv";
  static final String SUMMARY = "season.json";
  static final String DESCRIPTION = "datapackage.json";

  private SeasonExport() {}

  /**
   * Writes hourly.csv, daily.csv, season.json and datapackage.json, each whole or not at all. Files
   * of these names in the folder are replaced; others are left alone.
   *
   * @param result the season
   * @param resolution resolution of the totals
   * @param folder where to write; made when absent
   * @param progress told how far it is; when it ends the work, every file is as it was
   * @return the totals that were written
   * @throws IOException when the folder can't be written to
   */
  public static Totals write(
      SeasonResult result, Resolution resolution, Path folder, Progress progress)
      throws IOException {
    progress.step("totals", 0.1);
    Totals totals = result.totals(resolution);
    progress.step("tables", 0.4);
    Map<String, byte[]> files = files(result, totals);
    progress.step("files", 0.8);
    OutputFolder.write(folder, files);
    return totals;
  }

  /** The bytes of each file by name; the same for the same season whatever the machine. */
  public static Map<String, byte[]> files(SeasonResult result, Totals totals) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    texts(result, totals)
        .forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  /** Whether a folder holds logger files of a season, where tables would be read as such. */
  public static boolean amongTheRecord(Season season, Path seasonFolder, Path folder) {
    Path target = folder.toAbsolutePath().normalize();
    return season.record().provenance().files().stream()
        .map(file -> seasonFolder.resolve(file.file()).toAbsolutePath().normalize().getParent())
        .anyMatch(target::equals);
  }

  /** The text of each file by name; the same for the same season whatever the machine. */
  static Map<String, String> texts(SeasonResult result, Totals totals) {
    TableCsv csv = new TableCsv(totals.resolution(), result.season().sheet().utcOffset());
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(HOURLY, csv.text(totals.hourly()));
    texts.put(DAILY, csv.text(totals.daily()));
    texts.put(SUMMARY, SeasonSummary.json(result, totals));
    texts.put(
        DESCRIPTION,
        DataPackage.json(result.season().sheet().name(), texts, List.of(HOURLY, DAILY)));
    return texts;
  }
}
