package org.rimebook.desk.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.totals.Quality;
import org.rimebook.totals.TotalRow;

/**
 * Which rows of the totals table are shown, and in what order.
 *
 * @param scale length of the intervals
 * @param withCatch whether only totals above zero are shown
 * @param quality the only quality shown; empty = all
 * @param column the column they are ordered by, ties by time
 * @param descending whether the greatest comes first
 */
public record TotalsChoice(
    TotalsScale scale,
    boolean withCatch,
    Optional<Quality> quality,
    TotalsColumn column,
    boolean descending) {

  /** All days, in order of time. */
  public static final TotalsChoice FIRST =
      new TotalsChoice(TotalsScale.DAILY, false, Optional.empty(), TotalsColumn.START, false);

  /** At another scale. */
  public TotalsChoice at(TotalsScale other) {
    return new TotalsChoice(other, withCatch, quality, column, descending);
  }

  /** With totals above zero only, or all. */
  public TotalsChoice withCatch(boolean only) {
    return new TotalsChoice(scale, only, quality, column, descending);
  }

  /** With one quality, or all. */
  public TotalsChoice of(Optional<Quality> only) {
    return new TotalsChoice(scale, withCatch, only, column, descending);
  }

  /** By a column; the other way round when it is by that column already. */
  public TotalsChoice by(TotalsColumn other) {
    return new TotalsChoice(scale, withCatch, quality, other, other == column && !descending);
  }

  private boolean takes(TotalRow total) {
    return (!withCatch || total.catchUnits().orElse(0) > 0)
        && quality.map(only -> only == total.quality()).orElse(true);
  }

  /** The numbers of the rows shown, in order, among all rows by time. */
  List<Integer> order(List<TotalsRow> all) {
    Comparator<TotalsRow> byColumn = Comparator.comparing(TotalsRow::total, column.order());
    Comparator<Integer> order = Comparator.comparing(all::get, byColumn);
    return IntStream.range(0, all.size())
        .filter(i -> takes(all.get(i).total()))
        .boxed()
        .sorted(descending ? order.reversed() : order)
        .toList();
  }
}
