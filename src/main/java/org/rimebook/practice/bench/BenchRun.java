package org.rimebook.practice.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.rimebook.depth.WireDepths;
import org.rimebook.notebook.Entry;
import org.rimebook.practice.SimulatedSeason;
import org.rimebook.practice.published.CatchMethod;
import org.rimebook.practice.published.GaussianThreshold;
import org.rimebook.practice.published.HighWaterMark;
import org.rimebook.practice.published.HourGrid;
import org.rimebook.practice.published.NeutralAggregatingFilter;
import org.rimebook.practice.published.Oracle;
import org.rimebook.practice.published.ThreeWirePairwise;
import org.rimebook.practice.published.VisitJoin;
import org.rimebook.practice.published.WireLevels;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/**
 * Scores the estimator on one winter, beside the published methods and the oracle. The estimator is
 * judged by the tables it prints, in hundredths. The others see the depths that the screening and
 * the notebook left over, joined across visits, so that they aren't blamed for what an analyst
 * marks, and are judged over the same spans.
 */
public final class BenchRun {

  /** What the estimator is called in a table. */
  static final String ESTIMATOR = "Rimebook";

  private static final long HOUR_MS = 3_600_000;
  private static final double NANOS_PER_S = 1e9;
  private static final double HALF_A_YEAR_MS = Winter.HALF_A_YEAR * 86_400_000.0;
  private static final Duration CALM_WINDOW = Duration.ofMinutes(5);
  private static final Duration WINDY_WINDOW = Duration.ofMinutes(15);

  private final Winter winter;
  private final MarkedSeason marked;
  private final SeasonResult result;
  private final Totals totals;
  private final Spans hours;
  private final Spans days;
  private final double seconds;

  private BenchRun(Winter winter) throws InputException {
    this.winter = winter;
    this.marked = winter.season();
    Season season = InMemory.of(marked);
    long start = System.nanoTime();
    this.result = SeasonResult.of(season);
    this.totals = result.totals(Resolution.HUNDREDTH);
    this.seconds = (System.nanoTime() - start) / NANOS_PER_S;
    this.hours = Spans.of(totals.hourly());
    this.days = Spans.of(totals.daily());
  }

  /** Scores a winter. */
  public static WinterScore of(Winter winter) {
    try {
      return new BenchRun(winter).score();
    } catch (InputException e) {
      throw new IllegalStateException("a simulated season was refused: " + winter, e);
    }
  }

  private WinterScore score() {
    Pairs byHour = pairs(hours, hours.printedMm(Resolution.HUNDREDTH));
    Pairs byDay = pairs(days, days.printedMm(Resolution.HUNDREDTH));
    HourGrid grid = new HourGrid(span().fromMs(), totals.hourly().size());
    WireLevels levels = levels();
    List<MethodScore> published = new ArrayList<>();
    published.add(score(new NeutralAggregatingFilter(), levels, grid));
    published.add(score(new ThreeWirePairwise(), levels, grid));
    published.add(score(new HighWaterMark(), levels, grid));
    published.add(score(new GaussianThreshold(), levels, grid));
    double knownShare = (double) hours.coveredMs() / span().lengthMs();
    return new WinterScore(
        winter,
        new MethodScore(ESTIMATOR, Score.of(byHour, byDay, perHalfYear()), seconds),
        score(oracle(grid), levels, grid),
        published,
        honesty(byHour, byDay),
        100 * (1 - knownShare));
  }

  private Interval span() {
    List<TotalRow> table = totals.hourly();
    return new Interval(
        table.get(0).interval().fromMs(), table.get(table.size() - 1).interval().toMs());
  }

  private double perHalfYear() {
    return HALF_A_YEAR_MS / span().lengthMs();
  }

  private Pairs pairs(Spans spans, double[] estimateMm) {
    return new Pairs(spans.truthMm(marked.season().truth()), estimateMm);
  }

  private WinterScore.Honesty honesty(Pairs byHour, Pairs byDay) {
    double errorMm = byHour.totalErrorMm();
    double uMm = Math.sqrt(result.series().varianceMm2(span().fromMs(), span().toMs()));
    return new WinterScore.Honesty(
        Coverage.of(byHour, hours.uncertaintyMm()),
        Coverage.of(byDay, days.uncertaintyMm()),
        Coverage.ofOne(errorMm, uMm),
        Math.abs(errorMm) / uMm);
  }

  private MethodScore score(CatchMethod method, WireLevels levels, HourGrid grid) {
    long start = System.nanoTime();
    double[] hourly = method.hourlyCatchMm(levels, grid);
    double took = (System.nanoTime() - start) / NANOS_PER_S;
    Pairs byHour = pairs(hours, hours.sumsMm(hourly, grid));
    Pairs byDay = pairs(days, days.sumsMm(hourly, grid));
    return new MethodScore(method.name(), Score.of(byHour, byDay, perHalfYear()), took);
  }

  private Oracle oracle(HourGrid grid) {
    SimulatedSeason season = marked.season();
    BitSet wet = new BitSet(grid.hours());
    for (int hour = 0; hour < grid.hours(); hour++) {
      long from = grid.startMs() + hour * HOUR_MS;
      wet.set(hour, season.truth().catchMm(new Interval(from, from + HOUR_MS)) > 0);
    }
    return new Oracle(wet, marked.windy() ? WINDY_WINDOW : CALM_WINDOW);
  }

  private WireLevels levels() {
    SeasonRecord record = result.season().record();
    WireDepths depths = result.depths();
    long[] stampsMs = new long[record.size()];
    double[][] depthMm = new double[depths.wires()][record.size()];
    for (int row = 0; row < stampsMs.length; row++) {
      stampsMs[row] = record.stampMs(row);
      for (int wire = 0; wire < depthMm.length; wire++) {
        depthMm[wire][row] = depths.used(wire, row) ? depths.depthMm(wire, row) : Double.NaN;
      }
    }
    return VisitJoin.across(new WireLevels(stampsMs, depthMm), visits());
  }

  private List<Interval> visits() {
    return marked.notebook().inForce().stream()
        .filter(Entry.ServiceVisit.class::isInstance)
        .map(entry -> entry.span().orElseThrow())
        .toList();
  }
}
