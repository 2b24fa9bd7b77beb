package org.rimebook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimebook.accumulation.CatchEstimator;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.accumulation.Estimate;
import org.rimebook.accumulation.LevelEvidence;
import org.rimebook.accumulation.Ruling;
import org.rimebook.accumulation.Rulings;
import org.rimebook.accumulation.WireTemperature;
import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireCombiner;
import org.rimebook.depth.WireDepths;
import org.rimebook.findings.Findings;
import org.rimebook.findings.Scene;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.totals.Evidence;
import org.rimebook.totals.Hours;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.Totals;
import org.rimebook.undercatch.Undercatch;

/** Everything computed from a season: a pure function of its sheet, record and notebook. */
public final class SeasonResult {

  private final SeasonDepths stage;
  private final LevelSeries level;
  private final List<Ruling> rulings;
  private final Estimate estimate;
  private final Findings findings;
  private final Optional<Since> since;
  private Hours hours;

  private SeasonResult(SeasonDepths stage, Ruled ruled, Estimate estimate, Doubtful doubtful) {
    this.stage = stage;
    this.level = ruled.level;
    this.rulings = ruled.rulings;
    this.estimate = estimate;
    this.findings = doubtful.findings;
    this.since = doubtful.since;
  }

  /**
   * The level with what the notebook says about time.
   *
   * @param level the bucket's level
   * @param rulings what the notebook says
   */
  private record Ruled(LevelSeries level, List<Ruling> rulings) {}

  /**
   * How far a result is settled.
   *
   * @param findings what looks wrong and nobody has decided on
   * @param since what a provisional result goes back to
   */
  private record Doubtful(Findings findings, Optional<Since> since) {}

  /**
   * What a provisional result goes back to.
   *
   * @param full the result computed throughout
   * @param touched where the provisional one differs from it
   */
  private record Since(SeasonResult full, Interval touched) {}

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
    LevelSeries level =
        WireCombiner.combine(
            depths.converted(), depths.depths(), season.notebook(), progress.part(0, 0.1));
    Scene scene = Scene.of(depths.converted(), season.notebook(), depths.depths(), level);
    Looking looking = Looking.at(scene, progress);
    List<Ruling> rulings = Rulings.of(season.notebook());
    LevelEvidence evidence =
        new LevelEvidence(season.record(), season.sheet(), depths.depths(), level, rulings);
    Estimate estimate = CatchEstimator.estimate(evidence, progress.part(0.1, 1));
    Doubtful doubtful = new Doubtful(looking.findings(), Optional.empty());
    return new SeasonResult(depths, new Ruled(level, rulings), estimate, doubtful);
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

  /**
   * The same record and sheet under another notebook, computed where that changes something. What
   * was learnt from the whole season is held as it was in the last result computed throughout, from
   * which a provisional one is always worked out; so it depends on that and on the notebook alone.
   * Everything is computed, and the result isn't provisional, when nothing was learnt yet (no level
   * was usable) or no reading is left about the change.
   *
   * @param notebook the other notebook
   */
  public SeasonResult revised(Notebook notebook) {
    if (since.isPresent()) {
      return since.get().full.revised(notebook);
    }
    Season changed = season().with(notebook);
    Revision revision = new Revision(stage, level, changed);
    Optional<Interval> where = revision.changed(rulings);
    Findings open = findings.under(notebook);
    if (where.isEmpty()) {
      return new SeasonResult(
          revision.stage(),
          new Ruled(level, rulings),
          estimate,
          new Doubtful(open, Optional.empty()));
    }
    return revision
        .estimate(evidence(), estimate, where.get())
        .map(
            revised ->
                new SeasonResult(
                    revision.stage(),
                    new Ruled(revision.level(), revision.rulings()),
                    revised.estimate(),
                    new Doubtful(open, Optional.of(new Since(this, revised.part())))))
        .orElseGet(() -> of(stage.anew(changed, Progress.NONE), Progress.NONE));
  }

  /**
   * What the air temperature does to each wire, in the order of the sheet; empty when nothing could
   * be learnt from the season.
   */
  public List<WireTemperature> wireTemperatures() {
    return WireTemperature.of(evidence(), estimate);
  }

  /** The dry spells that tell of temperature. */
  public List<Interval> drySpells() {
    return WireTemperature.drySpells(estimate);
  }

  private LevelEvidence evidence() {
    return new LevelEvidence(season().record(), season().sheet(), depths(), level, rulings);
  }

  /** Whether it is computed in part only, what was learnt from the whole season being held. */
  public boolean provisional() {
    return since.isPresent();
  }

  /** Where a provisional result may differ from the last that was computed throughout. */
  public Optional<Interval> touched() {
    return since.map(Since::touched);
  }

  /** The season with the depths it was computed from. */
  public SeasonDepths stage() {
    return stage;
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

  /**
   * What looks wrong and nobody has decided on. A provisional result knows what was found before
   * and is still to be decided, and nothing that has come up since.
   */
  public Findings findings() {
    return findings;
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

  /**
   * The totals at a resolution. What is known of each hour is worked out once; a provisional result
   * takes over that of the hours it doesn't touch, and all are rounded anew.
   */
  public Totals totals(Resolution resolution) {
    return hours().totals(resolution);
  }

  private synchronized Hours hours() {
    if (hours == null) {
      Evidence evidence =
          new Evidence(
              season().sheet(),
              season().record(),
              season().notebook(),
              depths(),
              level,
              series(),
              findings);
      hours =
          since
              .map(base -> base.full.hours().revised(evidence, base.touched))
              .orElseGet(() -> Hours.of(evidence));
    }
    return hours;
  }
}
