package org.rimebook.season.why;

import static org.rimebook.station.Words.text;

import java.util.Optional;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.undercatch.Undercatch;

/** What the wind is taken to have carried past the gauge, and by which paper. */
record Adjustment(SeasonResult result, TotalRow row, Resolution resolution) {

  private static final String PAPER =
      "Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21, 3525–3542, eq. 3, by half hours";

  Section section() {
    if (row.adjustedUnits().isPresent()) {
      return Section.of("adjusted", new Line.Words(adjusted()), new Line.Words(PAPER));
    }
    return Section.of("adjusted", new Line.Words("not adjusted for wind: " + obstacle()));
  }

  private String adjusted() {
    double catchMm = resolution.toMm(row.catchUnits().orElse(0)).doubleValue();
    double adjustedMm = resolution.toMm(row.adjustedUnits().getAsLong()).doubleValue();
    return resolution.toMm(row.adjustedUnits().getAsLong())
        + text(
            " mm beside the total, %+.2f mm for what the wind carried past, standard uncertainty",
            adjustedMm - catchMm)
        + text(
            " %.2f mm",
            Undercatch.uncertaintyMm(catchMm, row.uncertaintyMm().orElse(0), adjustedMm));
  }

  private String obstacle() {
    Optional<String> lacking = Undercatch.obstacle(result.season().sheet());
    if (lacking.isPresent()) {
      return lacking.get();
    }
    if (Undercatch.of(result.season().sheet()).isEmpty()) {
      return "the station measures no wind";
    }
    if (row.catchUnits().isEmpty() || row.accumulatedSinceMs().isPresent()) {
      return "the half hours it fell in aren't known";
    }
    return "wind or air temperature is missing, or the half hours it fell in aren't known";
  }
}
