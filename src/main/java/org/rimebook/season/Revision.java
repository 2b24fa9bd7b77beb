package org.rimebook.season;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rimebook.accumulation.CatchRevision;
import org.rimebook.accumulation.Estimate;
import org.rimebook.accumulation.LevelEvidence;
import org.rimebook.accumulation.Ruling;
import org.rimebook.accumulation.Rulings;
import org.rimebook.depth.LevelRevision;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.RowRange;
import org.rimebook.depth.WireDepthStage;
import org.rimebook.depth.WireDepths;
import org.rimebook.notebook.Entry;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/** What another notebook changes of a computed season, worked out where it changes something. */
final class Revision {

  private final SeasonDepths before;
  private final Season season;
  private final SeasonRecord record;
  private WireDepths depths;
  private LevelSeries level;
  private Optional<Interval> changed;

  /**
   * @param before the season as it was
   * @param level its level
   * @param season the season under another notebook
   */
  Revision(SeasonDepths before, LevelSeries level, Season season) {
    this.before = before;
    this.season = season;
    this.record = season.record();
    this.depths = before.depths();
    this.level = level;
    this.changed = Optional.empty();
    revise();
  }

  private void revise() {
    Optional<RowRange> judged =
        WireDepthStage.differing(before.converted(), before.season().notebook(), season.notebook());
    depths = WireDepthStage.revised(before.converted(), before.depths(), season.notebook(), judged);
    Optional<RowRange> screened =
        judged.flatMap(rows -> depths.differing(before.depths(), about(rows)));
    Optional<RowRange> rows = hull(visited(), screened);
    if (rows.isPresent()) {
      LevelRevision.Revised revised =
          LevelRevision.of(before.converted(), depths, season.notebook(), level, rows.get());
      level = revised.level();
      int last = Math.max(revised.rows().fromRow(), revised.rows().toRow() - 1);
      changed =
          Optional.of(new Interval(record.stampMs(revised.rows().fromRow()), record.stampMs(last)));
    }
  }

  /** A spike may come or go some readings beside an entry. */
  private RowRange about(RowRange rows) {
    int most = record.size();
    return new RowRange(
        Math.max(0, rows.fromRow() - WireDepthStage.REACH_ROWS),
        Math.min(most, rows.toRow() + WireDepthStage.REACH_ROWS));
  }

  /** The rows of visits that have come or gone, and the one after, at which they cut the level. */
  private Optional<RowRange> visited() {
    List<Interval> was = visits(before.season());
    List<Interval> is = visits(season);
    Stream<Interval> gone = was.stream().filter(visit -> !is.contains(visit));
    Stream<Interval> come = is.stream().filter(visit -> !was.contains(visit));
    return Stream.concat(gone, come)
        .map(
            visit ->
                new RowRange(
                    record.firstRowAtOrAfter(visit.fromMs()),
                    Math.min(record.size(), record.firstRowAtOrAfter(visit.toMs()) + 1)))
        .filter(rows -> rows.fromRow() < rows.toRow())
        .reduce(Revision::hull);
  }

  private static List<Interval> visits(Season season) {
    return season.notebook().inForce().stream()
        .filter(entry -> entry instanceof Entry.ServiceVisit)
        .flatMap(entry -> entry.span().stream())
        .toList();
  }

  private static RowRange hull(RowRange a, RowRange b) {
    return new RowRange(Math.min(a.fromRow(), b.fromRow()), Math.max(a.toRow(), b.toRow()));
  }

  private static Optional<RowRange> hull(Optional<RowRange> a, Optional<RowRange> b) {
    return Stream.of(a, b).flatMap(Optional::stream).reduce(Revision::hull);
  }

  /** The season as it is now, with its depths. */
  SeasonDepths stage() {
    return new SeasonDepths(season, before.calibrations(), before.facts(), depths);
  }

  /** The level as it is now. */
  LevelSeries level() {
    return level;
  }

  /** What the notebook says about time now. */
  List<Ruling> rulings() {
    return Rulings.of(season.notebook());
  }

  /**
   * Where anything has changed; empty where nothing has.
   *
   * @param rulings the rulings as they were
   */
  Optional<Interval> changed(List<Ruling> rulings) {
    return Stream.of(changed, Rulings.difference(rulings, rulings()))
        .flatMap(Optional::stream)
        .reduce(
            (a, b) -> new Interval(Math.min(a.fromMs(), b.fromMs()), Math.max(a.toMs(), b.toMs())));
  }

  /**
   * The catch estimated anew where something has changed.
   *
   * @param was what it was estimated from
   * @param estimate the catch as it was
   * @param where what has changed
   * @return empty when all has to be estimated anew
   */
  Optional<CatchRevision.Revised> estimate(LevelEvidence was, Estimate estimate, Interval where) {
    LevelEvidence now = new LevelEvidence(record, season.sheet(), depths, level, rulings());
    return CatchRevision.of(estimate, was, now, where);
  }
}
