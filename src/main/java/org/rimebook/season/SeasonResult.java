package org.rimebook.season;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.accumulation.CatchEstimator;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.accumulation.Estimate;
import org.rimebook.accumulation.LevelEvidence;
import org.rimebook.accumulation.Ruling;
import org.rimebook.accumulation.Rulings;
import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireCombiner;
import org.rimebook.depth.WireDepths;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;
import org.rimebook.totals.Evidence;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.Totals;
import org.rimebook.totals.TotalsBuilder;
import org.rimebook.undercatch.Undercatch;

/** Everything computed from a season: a pure function of its sheet, record and notebook. */
public final class SeasonResult {

  private final SeasonDepths stage;
  private final LevelSeries level;
  private final List<Ruling> rulings;
  private final Estimate estimate;

  private SeasonResult(
      SeasonDepths stage, LevelSeries level, List<Ruling> rulings, Estimate estimate) {
    this.stage = stage;
    this.level = level;
    this.rulings = rulings;
    this.estimate = estimate;
  }

  /**
   * Computes a season.
   *
   * @throws InputException when a calibration can't be used
   */
  public static SeasonResult of(Season season) throws InputException {
    return of(SeasonDepths.of(season, Progress.NONE), Progress.NONE);
  }

  /**
   * Computes a season whose depths are known.
   *
   * @param depths the season with its depths
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static SeasonResult of(SeasonDepths depths, Progress progress) {
    Season season = depths.season();
    progress.step("combining the wires", 0);
    LevelSeries level =
        WireCombiner.combine(season.record(), depths.depths(), season.sheet(), season.notebook());
    List<Ruling> rulings = Rulings.of(season.notebook());
    LevelEvidence evidence =
        new LevelEvidence(season.record(), season.sheet(), depths.depths(), level, rulings);
    Estimate estimate = CatchEstimator.estimate(evidence, progress.part(0.1, 1));
    return new SeasonResult(depths, level, rulings, estimate);
  }

  /**
   * The same record and sheet under another notebook, all of it computed; what doesn't depend on
   * the notebook is shared.
   *
   * @param changed the season, made by {@link Season#with} or {@link Season#withNotebookIn}
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public SeasonResult anew(Season changed, Progress progress) {
    return of(stage.anew(changed, progress.part(0, 0.1)), progress.part(0.1, 1));
  }

  /** The season. */
  public Season season() {
    return stage.season();
  }

  /** What the check of the calibrations alerts to. */
  public CalibrationCheck calibrations() {
    return stage.calibrations();
  }

  /** Depth by wire and row, with the screening of each reading. */
  public WireDepths depths() {
    return stage.depths();
  }

  /** The bucket's level. */
  public LevelSeries level() {
    return level;
  }

  /** What the notebook says about time. */
  public List<Ruling> rulings() {
    return rulings;
  }

  /** The catch, and what was learnt and judged on the way to it. */
  public Estimate estimate() {
    return estimate;
  }

  /** The catch. */
  public CatchSeries series() {
    return estimate.series();
  }

  /** What was met on the way and didn't stop it, in the order of the stages. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    season().notes().forEach(note -> notes.add(note.toString()));
    notes.addAll(depths().notes());
    notes.addAll(Rulings.contradictions(season().notebook()));
    Undercatch.obstacle(season().sheet()).ifPresent(notes::add);
    return List.copyOf(notes);
  }

  /** The totals at a resolution. */
  public Totals totals(Resolution resolution) {
    return TotalsBuilder.build(
        new Evidence(
            season().sheet(), season().record(), season().notebook(), depths(), level, series()),
        resolution);
  }
}
