package org.rimebook.desk.model.against;

import java.util.List;
import java.util.Optional;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Opened;
import org.rimebook.station.Interval;

/**
 * What is to be drawn of a season.
 *
 * @param opened the season
 * @param computed what follows from it, as far as it has been computed
 * @param within the stretch of time to show
 * @param selected stretches selected
 * @param pair the wires set against each other
 * @param room cells there is room for
 */
public record Asked(
    Opened opened,
    Optional<Computed> computed,
    Interval within,
    List<Interval> selected,
    Pair pair,
    Room room) {

  public Asked {
    selected = List.copyOf(selected);
  }

  /**
   * Two wires by their number in the sheet.
   *
   * @param one the one whose departure is shown
   * @param other the one it departs from
   */
  public record Pair(int one, int other) {}

  /**
   * Room on the plots.
   *
   * @param curve frequency against depth
   * @param pair wire against wire
   */
  public record Room(Scatter.Size curve, Scatter.Size pair) {}

  /** Whether the readings are those of another question. */
  boolean sameReadings(Asked other) {
    return opened == other.opened
        && computed.isPresent() == other.computed.isPresent()
        && (computed.isEmpty() || computed.get() == other.computed.get());
  }

  /** Whether all but the selection is that of another question. */
  boolean sameButSelection(Asked other) {
    return sameReadings(other)
        && within.equals(other.within)
        && pair.equals(other.pair)
        && room.equals(other.room);
  }
}
