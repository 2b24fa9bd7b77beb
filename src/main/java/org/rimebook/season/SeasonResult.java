package org.rimebook.season;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.accumulation.CatchEstimator;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.accumulation.Estimate;
import org.rimebook.accumulation.Ruling;
import org.rimebook.accumulation.Rulings;
import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireCombiner;
import org.rimebook.depth.WireDepthStage;
import org.rimebook.depth.WireDepths;
import org.rimebook.station.InputException;
import org.rimebook.totals.Evidence;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.Totals;
import org.rimebook.totals.TotalsBuilder;
import org.rimebook.undercatch.Undercatch;

/**
 * Everything computed from a season: a pure function of its sheet, record and notebook.
 *
 * @param season the season
 * @param calibrations what the check of the calibrations alerts to
 * @param depths depth by wire and row, with the screening of each reading
 * @param level the bucket's level
 * @param rulings what the notebook says about time
 * @param estimate the catch, and what was learnt and judged on the way to it
 */
public record SeasonResult(
    Season season,
    CalibrationCheck calibrations,
    WireDepths depths,
    LevelSeries level,
    List<Ruling> rulings,
    Estimate estimate) {

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
    Estimate estimate =
        CatchEstimator.estimate(season.record(), season.sheet(), depths, level, rulings);
    return new SeasonResult(season, calibrations, depths, level, rulings, estimate);
  }

  /** The catch. */
  public CatchSeries series() {
    return estimate.series();
  }

  /** What was met on the way and didn't stop it, in the order of the stages. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    season.notes().forEach(note -> notes.add(note.toString()));
    notes.addAll(depths.notes());
    notes.addAll(Rulings.contradictions(season.notebook()));
    Undercatch.obstacle(season.sheet()).ifPresent(notes::add);
    return List.copyOf(notes);
  }

  /** The totals at a resolution. */
  public Totals totals(Resolution resolution) {
    return TotalsBuilder.build(
        new Evidence(season.sheet(), season.record(), season.notebook(), depths, level, series()),
        resolution);
  }
}
