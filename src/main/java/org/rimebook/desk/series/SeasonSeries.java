package org.rimebook.desk.series;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.station.Channel;

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
          Kind.HUMIDITY, Channel.RELATIVE_HUMIDITY,
          Kind.SUPPLY, Channel.SUPPLY_VOLTAGE);

  public SeasonSeries {
    lines = Map.copyOf(lines);
  }

  /** The lines of a season. */
  public static SeasonSeries of(Season season, WireDepths depths, Optional<LevelSeries> level) {
    List<Line> lines = wires(season, depths, level);
    SeasonRecord record = season.record();
    CHANNELS.forEach(
        (kind, quantity) ->
            season
                .sheet()
                .channelIndex(quantity)
                .map(channel -> RecordSeries.channel(record, channel))
                .ifPresent(all -> lines.add(new Line(kind, () -> TraceSeries.whole("", all)))));
    return new SeasonSeries(record, depths, level, made(lines));
  }

  /** The same season with other readings used, or with the bucket's level. */
  public SeasonSeries with(Season season, WireDepths newDepths, Optional<LevelSeries> newLevel) {
    Map<Kind, List<TraceSeries>> changed = new EnumMap<>(lines);
    changed.putAll(made(wires(season, newDepths, newLevel)));
    return new SeasonSeries(record, newDepths, newLevel, changed);
  }

  /** Whether these are the lines of what is computed. */
  public boolean follows(WireDepths otherDepths, Optional<LevelSeries> otherLevel) {
    return depths == otherDepths && level.equals(otherLevel);
  }

  /** Lines of the wires and the bucket, to be made. */
  private static List<Line> wires(Season season, WireDepths depths, Optional<LevelSeries> level) {
    SeasonRecord record = season.record();
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < depths.wires(); i++) {
      int wire = i;
      Screened screened = new Screened(season.sheet().wires().get(i).name(), i, depths);
      lines.add(
          new Line(Kind.FREQUENCY, () -> screened.trace(RecordSeries.frequency(record, wire))));
      lines.add(
          new Line(Kind.DEPTH, () -> screened.trace(RecordSeries.depth(record, depths, wire))));
    }
    level.ifPresent(
        l ->
            lines.add(
                new Line(
                    Kind.DEPTH, () -> TraceSeries.whole(BUCKET, new BucketSeries(record, l)))));
    return lines;
  }

  /** Makes lines side by side. */
  private static Map<Kind, List<TraceSeries>> made(List<Line> lines) {
    List<TraceSeries> made = lines.parallelStream().map(line -> line.making().get()).toList();
    Map<Kind, List<TraceSeries>> byKind = new EnumMap<>(Kind.class);
    byKind.put(Kind.FREQUENCY, List.of());
    byKind.put(Kind.DEPTH, List.of());
    for (int i = 0; i < made.size(); i++) {
      byKind.merge(lines.get(i).kind(), List.of(made.get(i)), SeasonSeries::joined);
    }
    return byKind;
  }

  private static List<TraceSeries> joined(List<TraceSeries> some, List<TraceSeries> more) {
    List<TraceSeries> all = new ArrayList<>(some);
    all.addAll(more);
    return List.copyOf(all);
  }

  /** A line to be made for a strip. */
  private record Line(Kind kind, Supplier<TraceSeries> making) {}

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
