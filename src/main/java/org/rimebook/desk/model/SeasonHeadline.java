package org.rimebook.desk.model;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.List;
import java.util.Optional;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * A season in one line.
 *
 * @param total its catch with uncertainty, completeness, and what is missing or suspect
 * @param signOff who signed, and what changed since
 */
public record SeasonHeadline(String total, String signOff) {

  /** Of a workspace without a season. */
  public static final SeasonHeadline NONE = new SeasonHeadline("", "");

  /** The line of a workspace as it is. */
  public static SeasonHeadline of(Workspace workspace) {
    return workspace
        .opened()
        .get()
        .map(
            opened ->
                new SeasonHeadline(
                    total(workspace.computed().get()), SignOffWords.of(opened.season())))
        .orElse(NONE);
  }

  private static String total(Optional<Computed> computed) {
    return computed.map(SeasonHeadline::total).orElse("");
  }

  private static String total(Computed computed) {
    List<TotalRow> hours = computed.totals().hourly();
    double complete = hours.stream().mapToDouble(TotalRow::completeness).average().orElse(0);
    return season(computed)
        + text(" · %.0f %% complete", Math.floor(100 * complete))
        + count(hours, Quality.MISSING)
        + count(hours, Quality.SUSPECT);
  }

  /** Catch of the season with its uncertainty. */
  static String season(Computed computed) {
    List<TotalRow> hours = computed.totals().hourly();
    if (computed.totals().seasonUnits().isEmpty()) {
      return "no total";
    }
    double variance =
        computed
            .result()
            .series()
            .varianceMm2(
                hours.get(0).interval().fromMs(), hours.get(hours.size() - 1).interval().toMs());
    return computed.totals().resolution().toMm(computed.totals().seasonUnits().getAsLong())
        + uncertainty(Math.sqrt(variance), computed.totals().resolution());
  }

  /** To the resolution, and finer where that would say there is none. */
  private static String uncertainty(double mm, Resolution resolution) {
    int decimals = mm < resolution.mm() ? resolution.decimals() + 1 : resolution.decimals();
    return text(" mm ± %." + decimals + "f mm", mm);
  }

  private static String count(List<TotalRow> hours, Quality quality) {
    long count = hours.stream().filter(hour -> hour.quality() == quality).count();
    return count == 0 ? "" : " · " + counted(count, "hour") + " " + quality.code();
  }
}
