package org.rimebook.season.why;

import java.util.List;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * Why one total is what it is.
 *
 * @param station name of the station
 * @param interval the hour or day
 * @param held the stretch of time of which the total holds the catch: from where it is accumulated
 * @param sections what it rests on
 * @param adjusted its adjustment for wind undercatch, which doesn't change it
 */
public record Explanation(
    String station, Interval interval, Interval held, List<Section> sections, Section adjusted) {

  public Explanation {
    sections = List.copyOf(sections);
  }

  /**
   * Explains a total.
   *
   * @param result the season
   * @param rows the table the total stands in, hourly or daily
   * @param row the total
   * @param resolution resolution of the table
   */
  public static Explanation of(
      SeasonResult result, List<TotalRow> rows, TotalRow row, Resolution resolution) {
    return new Explanation(
        result.season().sheet().name(),
        row.interval(),
        Sections.held(row),
        new Sections(result, rows, row, resolution).all(),
        new Adjustment(result, row, resolution).section());
  }
}
