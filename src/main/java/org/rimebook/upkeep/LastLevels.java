package org.rimebook.upkeep;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.rimebook.depth.LevelsBeside;
import org.rimebook.season.SeasonDepths;

/**
 * What wires show at the end of a record.
 *
 * @param atMs the last reading [ms since epoch]
 * @param wires depth of each, in the order of the sheet [mm]; empty where it can't be read
 */
public record LastLevels(long atMs, List<OptionalDouble> wires) {

  public LastLevels {
    wires = List.copyOf(wires);
  }

  /** What the wires of a season show. */
  public static LastLevels of(SeasonDepths season) {
    LevelsBeside levels = new LevelsBeside(season.season().record(), season.depths());
    int count = season.season().sheet().wires().size();
    return new LastLevels(
        season.season().record().stampMs(season.season().record().size() - 1),
        IntStream.range(0, count).mapToObj(levels::last).toList());
  }

  /** Mean of those that can be read [mm]. */
  public OptionalDouble meanMm() {
    return LevelsBeside.mean(wires.toArray(OptionalDouble[]::new));
  }
}
