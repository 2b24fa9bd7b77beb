package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.StationSheet;
import org.rimebook.station.StationSheetReader;

/**
 * What keeps a draft from being a season, each at its place and in words with what to do.
 *
 * @param station faults of the station's fields
 * @param wires of each wire in turn
 * @param columns what is wrong with the columns taken
 * @param sheet what reading the whole sheet refuses beside that
 */
public record DraftCheck(
    Map<StationField, String> station,
    List<WireCheck> wires,
    List<String> columns,
    List<String> sheet) {

  public DraftCheck {
    station = Map.copyOf(station);
    wires = List.copyOf(wires);
    columns = List.copyOf(columns);
    sheet = List.copyOf(sheet);
  }

  /** Checks a draft. */
  public static DraftCheck of(SeasonDraft draft) {
    Map<StationField, String> station = new EnumMap<>(StationField.class);
    for (StationField field : StationField.values()) {
      field.fault(draft.text(field)).ifPresent(fault -> station.put(field, fault));
    }
    List<WireCheck> wires = new ArrayList<>();
    for (int wire = 0; wire < draft.wires().size(); wire++) {
      wires.add(WireCheck.of(draft, wire));
    }
    List<String> columns = columns(draft);
    boolean fine = station.isEmpty() && columns.isEmpty() && wires.stream().allMatch(w -> w.fine());
    return new DraftCheck(station, wires, columns, fine ? sheet(draft) : List.of());
  }

  /** Whether a season can be made of it and opened. */
  public boolean complete() {
    return open() == 0;
  }

  /** How many things are left to enter or to mend. */
  public int open() {
    return station.size()
        + wires.stream().mapToInt(wire -> wire.fields().size() + wire.faults().size()).sum()
        + columns.size()
        + sheet.size();
  }

  /** The sheet of a complete draft. */
  static StationSheet read(SeasonDraft draft) throws InputException {
    return StationSheetReader.read(DraftText.of(draft), Season.STATION_FILE).sheet();
  }

  private static List<String> sheet(SeasonDraft draft) {
    try {
      read(draft);
      return List.of();
    } catch (InputException e) {
      return e.problems().stream().map(DraftCheck::words).toList();
    }
  }

  /** A problem without its file, which isn't written yet. */
  static String words(Problem problem) {
    return problem.what() + (problem.remedy().isEmpty() ? "" : ". " + problem.remedy());
  }

  private static List<String> columns(SeasonDraft draft) {
    List<String> faults = new ArrayList<>();
    if (draft.columns().stream().noneMatch(use -> use.role() == ColumnRole.TIME)) {
      faults.add("No column is the time: choose the one that is");
    }
    if (draft.wires().isEmpty()) {
      faults.add(
          "No column is a wire: choose the columns that hold their frequency, or their counts"
              + " with the gate time");
    }
    draft.columns().stream()
        .map(ColumnUse::heightFault)
        .flatMap(Optional::stream)
        .forEach(fault -> faults.add("Height of the wind sensor: " + fault));
    long names = draft.source().preview().columns().stream().map(c -> c.name()).distinct().count();
    if (names < draft.columns().size()) {
      faults.add("Two columns of the file have one name: give each its own in the file's header");
    }
    return faults;
  }
}
