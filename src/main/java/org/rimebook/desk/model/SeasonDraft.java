package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.rimebook.record.PreviewColumn;
import org.rimebook.station.RecordLayout.TimeIs;
import org.rimebook.station.WindShield;

/**
 * A new season as it is being entered.
 *
 * @param source the logger files
 * @param folder the season folder to be
 * @param station fields of the station as entered
 * @param shield what stands around the gauge
 * @param columns what is taken from each column, in the order of the columns
 * @param wires the wires, in the order of their columns
 * @param timeIs which end of its interval a time names
 */
public record SeasonDraft(
    SeasonSource source,
    Path folder,
    Map<StationField, String> station,
    WindShield shield,
    List<ColumnUse> columns,
    List<WireDraft> wires,
    TimeIs timeIs) {

  public SeasonDraft {
    station = Map.copyOf(station);
    columns = List.copyOf(columns);
    wires = List.copyOf(wires);
  }

  /** A field of the station as entered; empty text when it wasn't. */
  public String text(StationField field) {
    return station.getOrDefault(field, "");
  }

  /** A number of the station; empty when it isn't one yet. */
  OptionalDouble number(StationField field) {
    return field.fault(text(field)).isPresent()
        ? OptionalDouble.empty()
        : Numbers.read(text(field));
  }

  /** Name of a column. */
  public String columnName(int column) {
    return source.preview().columns().get(column).name();
  }

  /** Number of a column; -1 when there is none of the name. */
  int column(String name) {
    return source.preview().columns().stream().map(PreviewColumn::name).toList().indexOf(name);
  }

  /** Into another folder. */
  public SeasonDraft into(Path other) {
    return new SeasonDraft(source, other, station, shield, columns, wires, timeIs);
  }

  /** With another entry in a field of the station. */
  public SeasonDraft with(StationField field, String text) {
    Map<StationField, String> changed = new EnumMap<>(StationField.class);
    changed.putAll(station);
    changed.put(field, text);
    return new SeasonDraft(source, folder, changed, shield, columns, wires, timeIs);
  }

  /** With something else around the gauge. */
  public SeasonDraft with(WindShield other) {
    return new SeasonDraft(source, folder, station, other, columns, wires, timeIs);
  }

  /** With times that name the other end of their interval. */
  public SeasonDraft with(TimeIs end) {
    return new SeasonDraft(source, folder, station, shield, columns, wires, end);
  }

  /** With another entry in a field of a wire. */
  public SeasonDraft with(int wire, WireField field, String text) {
    List<WireDraft> changed = new ArrayList<>(wires);
    changed.set(wire, wires.get(wire).with(field, text));
    return new SeasonDraft(source, folder, station, shield, columns, changed, timeIs);
  }

  /**
   * With something else taken from a column. There is one time, and a wire for each such column.
   */
  public SeasonDraft with(int column, ColumnUse use) {
    List<ColumnUse> changed = new ArrayList<>(columns);
    if (use.role() == ColumnRole.TIME) {
      changed.replaceAll(old -> old.role() == ColumnRole.TIME ? ColumnUse.NONE : old);
    }
    changed.set(column, use);
    List<WireDraft> hung = new ArrayList<>();
    for (int i = 0; i < changed.size(); i++) {
      if (changed.get(i).role() == ColumnRole.WIRE) {
        hung.add(wireOf(columnName(i), hung.size() + 1));
      }
    }
    return new SeasonDraft(source, folder, station, shield, changed, hung, timeIs);
  }

  private WireDraft wireOf(String column, int number) {
    return wires.stream()
        .filter(wire -> wire.column().equals(column))
        .findFirst()
        .orElseGet(() -> new WireDraft(column, Map.of(WireField.NAME, "wire " + number)));
  }
}
