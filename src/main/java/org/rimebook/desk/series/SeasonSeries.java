package org.rimebook.desk.series;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.station.Channel;
import org.rimebook.station.StationSheet;

/**
 * All lines of a season's strips but the catch, with their pyramids. Immutable; takes some
 * hundredths of a second a million readings to make.
 *
 * @param record the record they are of
 * @param depths the depths, and which readings are used
 * @param level the bucket's level; empty before it is computed
 * @param lines the lines of each strip there is
 */
public record SeasonSeries(
    SeasonRecord record,
    WireDepths depths,
    Optional<LevelSeries> level,
    Map<Kind, List<TraceSeries>> lines) {

  /** Name of the line of the bucket's level. */
  public static final String BUCKET = "bucket";

  private static final Map<Kind, String> CHANNELS =
      Map.of(
          Kind.TEMPERATURE, Channel.AIR_TEMPERATURE,
          Kind.WIND, Channel.WIND_SPEED,
          Kind.HUMIDITY, "relative_humidity",
          Kind.SUPPLY, Channel.SUPPLY_VOLTAGE);

  public SeasonSeries {
    lines = Map.copyOf(lines);
  }

  /** The lines of a season. */
  public static SeasonSeries of(Season season, WireDepths depths, Optional<LevelSeries> level) {
    Map<Kind, List<TraceSeries>> lines = wires(season, depths, level);
    StationSheet sheet = season.sheet();
    for (Map.Entry<Kind, String> channel : CHANNELS.entrySet()) {
      sheet
          .channel(channel.getValue())
          .map(c -> RecordSeries.channel(season.record(), sheet.channels().indexOf(c)))
          .ifPresent(
              readings -> lines.put(channel.getKey(), List.of(TraceSeries.whole("", readings))));
    }
    return new SeasonSeries(season.record(), depths, level, lines);
  }

  /** The same season with other readings used, or with the bucket's level. */
  public SeasonSeries with(Season season, WireDepths newDepths, Optional<LevelSeries> newLevel) {
    Map<Kind, List<TraceSeries>> changed = new EnumMap<>(lines);
    changed.putAll(wires(season, newDepths, newLevel));
    return new SeasonSeries(record, newDepths, newLevel, changed);
  }

  /** Whether these are the lines of what is computed. */
  public boolean follows(WireDepths otherDepths, Optional<LevelSeries> otherLevel) {
    return depths == otherDepths && level.equals(otherLevel);
  }

  private static Map<Kind, List<TraceSeries>> wires(
      Season season, WireDepths depths, Optional<LevelSeries> level) {
    SeasonRecord record = season.record();
    List<TraceSeries> depth = new ArrayList<>();
    List<TraceSeries> frequency = new ArrayList<>();
    IntStream.range(0, depths.wires())
        .forEach(
            wire -> {
              String name = season.sheet().wires().get(wire).name();
              Screened screened = new Screened(name, wire, depths);
              frequency.add(screened.trace(RecordSeries.frequency(record, wire)));
              depth.add(screened.trace(RecordSeries.depth(record, depths, wire)));
            });
    level.ifPresent(l -> depth.add(TraceSeries.whole(BUCKET, new BucketSeries(record, l))));
    Map<Kind, List<TraceSeries>> lines = new EnumMap<>(Kind.class);
    lines.put(Kind.FREQUENCY, List.copyOf(frequency));
    lines.put(Kind.DEPTH, List.copyOf(depth));
    return lines;
  }

  private record Screened(String name, int wire, WireDepths depths) {
    TraceSeries trace(RecordSeries all) {
      return new TraceSeries(
          name,
          wire,
          Pyramid.of(all.used(depths, wire)),
          Pyramid.of(PickedSeries.leftOut(all, depths, wire)));
    }
  }
}
