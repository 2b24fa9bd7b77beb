package org.rimebook.export.figure;

import java.util.List;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * The daily catch of another station, to be drawn beside the season's.
 *
 * @param name what it is called
 * @param days its days in order, as far as there are any
 * @param resolution resolution of their totals
 */
public record OtherDays(String name, List<TotalRow> days, Resolution resolution) {

  public OtherDays {
    days = List.copyOf(days);
  }
}
