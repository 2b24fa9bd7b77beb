package org.rimebook.season;

import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.ConvertedWires;
import org.rimebook.depth.WireDepthStage;
import org.rimebook.depth.WireDepths;
import org.rimebook.findings.RecordFacts;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

/**
 * A season with the depths of its wires: what can be shown before anything is estimated.
 *
 * @param season the season
 * @param calibrations what the check of the calibrations alerts to
 * @param facts the wires' depths before the notebook was heard, and what else it doesn't change
 * @param depths depth by wire and row, with the screening of each reading
 */
public record SeasonDepths(
    Season season, CalibrationCheck calibrations, RecordFacts facts, WireDepths depths) {

  /**
   * The depths of a season.
   *
   * @param season the season
   * @param progress hears of it
   * @throws InputException when a calibration can't be used
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static SeasonDepths of(Season season, Progress progress) throws InputException {
    CalibrationCheck calibrations = CalibrationCheck.of(season.sheet(), Season.STATION_FILE);
    ConvertedWires converted =
        ConvertedWires.of(season.record(), season.sheet(), progress.part(0, 0.5));
    WireDepths depths = WireDepthStage.of(converted, season.notebook(), progress.part(0.5, 1));
    return new SeasonDepths(season, calibrations, new RecordFacts(converted), depths);
  }

  /** The wires' depths before the notebook was heard. */
  public ConvertedWires converted() {
    return facts.converted();
  }

  /**
   * The depths of the same record and sheet under another notebook.
   *
   * @param changed the season, made by {@link Season#with} or {@link Season#withNotebookIn}
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public SeasonDepths anew(Season changed, Progress progress) {
    return new SeasonDepths(
        changed, calibrations, facts, WireDepthStage.of(converted(), changed.notebook(), progress));
  }
}
