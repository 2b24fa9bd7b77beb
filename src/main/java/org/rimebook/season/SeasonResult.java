package org.rimebook.season;

import java.util.List;
import java.util.stream.Stream;
import org.rimebook.accumulation.CatchEstimator;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.accumulation.Ruling;
import org.rimebook.accumulation.Rulings;
import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireCombiner;
import org.rimebook.depth.WireDepthStage;
import org.rimebook.depth.WireDepths;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.totals.Evidence;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.Totals;
import org.rimebook.totals.TotalsBuilder;

/**
 * Everything computed from a season: a pure function of its sheet, record and notebook.
 *
 * @param season the season
 * @param calibrations what the check of the calibrations alerts to
 * @param depths depth by wire and row, with the screening of each reading
 * @param level the bucket's level
 * @param rulings what the notebook says about time
 * @param series the catch
 */
public record SeasonResult(
    Season season,
    CalibrationCheck calibrations,
    WireDepths depths,
    LevelSeries level,
    List<Ruling> rulings,
    CatchSeries series) {

  /**
   * Computes a season.
   *
   * @throws InputException when a calibration can't be used
   */
  public static SeasonResult of(Season season) throws InputException {
    CalibrationCheck calibrations = CalibrationCheck.of(season.sheet(), Season.STATION_FILE);
    WireDepths depths = WireDepthStage.of(season.record(), season.sheet(), season.notebook());
    LevelSeries level =
        WireCombiner.combine(season.record(), depths, season.sheet(), season.notebook());
    List<Ruling> rulings = Rulings.of(season.notebook());
    CatchSeries series =
        CatchEstimator.estimate(season.record(), season.sheet(), depths, level, rulings);
    return new SeasonResult(season, calibrations, depths, level, rulings, series);
  }

  /** What was met on the way and didn't stop it, in the order of the stages. */
  public List<String> notes() {
    return Stream.concat(season.notes().stream().map(Problem::toString), depths.notes().stream())
        .toList();
  }

  /** The totals at a resolution. */
  public Totals totals(Resolution resolution) {
    return TotalsBuilder.build(
        new Evidence(season.sheet(), season.record(), season.notebook(), depths, level, series),
        resolution);
  }
}
