package org.rimebook.export.network;

import java.util.List;
import java.util.Optional;

/**
 * One season of a network. Texts are as in its {@code season.json}, and empty where it has none.
 *
 * @param folder its path below the network's folder
 * @param station name of the station
 * @param from start of its first hour, station time
 * @param to end of its last hour
 * @param catchMm the season's catch [mm]
 * @param uncertaintyMm its standard uncertainty, k = 1 [mm]
 * @param completenessPct share covered by usable readings [%]
 * @param worstQuality the worst quality among its days
 * @param findingsOpen findings nobody has decided on
 * @param error why it couldn't be made; absent when it was
 */
public record NetworkRow(
    String folder,
    String station,
    String from,
    String to,
    String catchMm,
    String uncertaintyMm,
    String completenessPct,
    String worstQuality,
    String findingsOpen,
    Optional<String> error) {

  /** A season that couldn't be made. */
  static NetworkRow failed(String folder, String error) {
    return new NetworkRow(folder, "", "", "", "", "", "", "", "", Optional.of(error));
  }

  /** Names of the columns of the table. */
  static List<String> columns() {
    return List.of(
        "station",
        "from",
        "to",
        "catch_mm",
        "uncertainty_mm",
        "completeness_pct",
        "worst_quality",
        "findings_open",
        "folder",
        "state",
        "error");
  }

  /** The fields in the order of the columns. */
  List<String> fields() {
    return List.of(
        station,
        from,
        to,
        catchMm,
        uncertaintyMm,
        completenessPct,
        worstQuality,
        findingsOpen,
        folder,
        error.isPresent() ? "failed" : "made",
        error.orElse(""));
  }
}
