package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.rimebook.depth.Robust;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;

/** From a level series and the rulings of the notebook to catch. A pure function. */
public final class CatchEstimator {

  /** A level has changed when it differs by more than this many standard uncertainties. */
  private static final double BEYOND = 2;

  private static final int ROUNDS = 2;

  /**
   * A fall over a gap by more than this and what may have evaporated means that somebody or
   * something was at the bucket, and what fell isn't known; our own choice, evaporation without oil
   * reaching several millimetres a day (from memory).
   */
  private static final double DISTURBED_MM = 0.5;

  private static final double EVAPORATED_MM_PER_H = 5.0 / 24;

  /** A silence up to this long beside a visit belongs to it [ms]. */
  private static final long JOINED_MS = 3_600_000;

  private final LevelEvidence evidence;
  private final SeasonRecord record;
  private final double statedPerDegC;
  private final List<Ruling> rulings;
  private final LevelNodes nodes;
  private final Covariates covariates;
  private final CatchSeries.Builder pieces;
  private final Progress progress;

  private CatchEstimator(LevelEvidence evidence, Progress progress) {
    this.evidence = evidence;
    this.record = evidence.record();
    this.statedPerDegC = evidence.sheet().statedPerDegC();
    this.rulings = evidence.rulings();
    this.progress = progress;
    progress.step("looking at the level", 0);
    this.nodes = NodeBuilder.build(record, evidence.level(), rulings);
    this.covariates = Covariates.of(nodes, evidence);
    this.pieces = new CatchSeries.Builder(record.stampMs(0));
  }

  /** Makes pieces of nodes whose catch is known. */
  private CatchEstimator(LevelEvidence evidence, LevelNodes nodes, long startMs) {
    this.evidence = evidence;
    this.record = evidence.record();
    this.statedPerDegC = evidence.sheet().statedPerDegC();
    this.rulings = evidence.rulings();
    this.progress = Progress.NONE;
    this.nodes = nodes;
    this.covariates = Covariates.none(nodes);
    this.pieces = new CatchSeries.Builder(startMs);
  }

  /**
   * Estimates the catch between the first and the last reading.
   *
   * @param evidence what there is
   * @param progress hears of it
   */
  public static Estimate estimate(LevelEvidence evidence, Progress progress) {
    return new CatchEstimator(evidence, progress).estimate();
  }

  private Estimate estimate() {
    long endMs = record.stampMs(record.size() - 1);
    if (nodes.size() == 0) {
      addBreak(endMs);
      return new Estimate(
          pieces.build(0, 0), Optional.empty(), () -> LevelJudgement.none(nodes), Optional.empty());
    }
    CatchBasis basis = basis();
    Fit fit = basis.fit();
    CatchSeries series = pieces(fit, 0, nodes.size() - 1, endMs);
    return new Estimate(series, Optional.of(fit.learnt()), fit::judgement, Optional.of(basis));
  }

  /** The catch from where the pieces start to a node, or beyond the last to an instant. */
  private CatchSeries pieces(Fit fit, int fromNode, int toNode, long endMs) {
    addBreak(nodes.timeMs()[fromNode]);
    for (int link = fromNode; link < toNode; link++) {
      addLink(link, fit);
    }
    addBreak(endMs);
    return pieces.build(
        fit.learnt().rehearsed().dryFactor() * fit.smoothing().driftMm2PerH(),
        fit.learnt().commonShare());
  }

  /**
   * The catch in part of a season.
   *
   * @param evidence what there is
   * @param nodes nodes of the part
   * @param fit what is known of them
   * @param part where it starts and ends: at nodes, or where the record does
   */
  static CatchSeries pieces(LevelEvidence evidence, LevelNodes nodes, Fit fit, Interval part) {
    int from = Math.max(0, nodes.lastAtOrBefore(part.fromMs()));
    int to = Math.max(0, nodes.lastAtOrBefore(part.toMs()));
    return new CatchEstimator(evidence, nodes, part.fromMs()).pieces(fit, from, to, part.toMs());
  }

  /**
   * Learns noise and drift, and smooths, in turns: what is dry depends on them and they are learnt
   * where it is dry.
   */
  private CatchBasis basis() {
    NodeNoise.Judged judged = NodeNoise.judge(nodes, covariates.windMs());
    double[] noise = judged.varianceMm2();
    // Most of a season is dry: before it is known where, all of it tells how noise averages out.
    double before = NoiseCorrelation.factor(nodes, noise, new double[noise.length]);
    double[] raised = Arrays.stream(noise).map(v -> v * before).toArray();
    Smoothing smoothing = Smoothing.of(nodes, raised, raised, progress.part(0.1, 0.3));
    Rounds rounds = new Rounds(noise, smoothing);
    for (int round = 0; round < ROUNDS; round++) {
      rounds.next(progress.part(0.3 + 0.2 * round, 0.5 + 0.2 * round));
    }
    return new CatchBasis(nodes, judged, covariates, rounds.model, rounds.wet, rounds.fit());
  }

  /** Noise and drift as they are learnt, round by round. */
  private final class Rounds {
    private final double[] noise;
    private Smoothing smoothing;
    private DriftModel model;
    private double[] wet;
    private LevelNodes corrected;
    private double correlation;
    private double whole;

    Rounds(double[] noise, Smoothing smoothing) {
      this.noise = noise;
      this.smoothing = smoothing;
    }

    void next(Progress part) {
      part.step("learning noise and drift", 0);
      wet = smoothing.result().wet();
      model = DriftModel.fit(nodes, covariates, noise, wet);
      corrected = nodes.at(model.corrected(wet));
      correlation = NoiseCorrelation.factor(corrected, noise, wet);
      whole = NoiseCorrelation.whole(corrected, noise, wet);
      smoothing = Smoothing.of(corrected, times(correlation), times(whole), part.part(0.2, 1));
    }

    private double[] times(double factor) {
      return Arrays.stream(noise).map(v -> v * factor).toArray();
    }

    Fit fit() {
      progress.step("following the rain", 0.7);
      WetSpells.Catch caught = WetSpells.of(corrected, smoothing);
      double usualMm2 = Robust.medianInPlace(noise.clone(), noise.length);
      double counterMm2 = CounterBias.mm2(evidence, usualMm2);
      Rehearsal.Verdict verdict =
          Rehearsal.of(
              corrected, smoothing, caught.caughtMm(), counterMm2, progress.part(0.75, 0.95));
      Learnt learnt =
          new Learnt(
              Math.sqrt(usualMm2),
              correlation,
              whole,
              Math.sqrt(smoothing.driftMm2PerH()),
              model.law(),
              verdict.rehearsed(),
              counterMm2,
              Math.min(1, Math.hypot(verdict.shareLost(), model.calibrationShare(statedPerDegC))));
      LevelJudgement judgement = LevelJudgement.of(nodes, noise, model.drift(wet));
      return new Fit(corrected, smoothing, caught, learnt, judgement, model.wetDoubtMm(wet));
    }
  }

  /**
   * What the level tells.
   *
   * @param corrected the level without drift
   * @param smoothing the level smoothed
   * @param caught what fell
   * @param learnt what was learnt on the way
   * @param judgement noise and drift as judged at each time
   * @param wetDoubtMm by link: how much more or less than taken may have evaporated while it fell
   *     [mm]
   */
  record Fit(
      LevelNodes corrected,
      Smoothing smoothing,
      WetSpells.Catch caught,
      Learnt learnt,
      LevelJudgement judgement,
      double[] wetDoubtMm) {
    CatchSeries.Ends ends(int link) {
      CatchSeries.Ends stated =
          learnt
              .rehearsed()
              .ends(link, smoothing.ends(link, caught.levelMm2()), caught)
              .widened(learnt.counterMm2());
      return new CatchSeries.Ends(
          stated.startMm2(),
          stated.endMm2(),
          stated.gain(),
          // From none to twice as much, either end likelier than the middle, as air mostly is moist
          // or isn't: arc sine, JCGM 101:2008, 6.4.6.
          wetDoubtMm[link] / Math.sqrt(2));
    }
  }

  private void addLink(int link, Fit fit) {
    long to = nodes.timeMs()[link + 1];
    CatchSeries.Ends ends = fit.ends(link);
    double caughtMm = fit.caught().caughtMm()[link];
    double rise = fit.smoothing().result().catchMm()[link];
    switch (nodes.links()[link]) {
      case STEP ->
          pieces.add(
              fit.caught().within()[link] ? CatchSeries.Kind.WET_STEP : CatchSeries.Kind.DRY_STEP,
              to,
              caughtMm,
              ends);
      case GAP -> addGap(link, ends, rise, fit.smoothing().driftMm2PerH());
      case LATE ->
          pieces.add(
              rise > 0 ? CatchSeries.Kind.LATE_CATCH : CatchSeries.Kind.GAP_STILL,
              to,
              Math.max(0, rise),
              ends);
      case BREAK -> addBreak(to);
    }
  }

  private void addGap(int link, CatchSeries.Ends ends, double riseMm, double driftMm2PerH) {
    long to = nodes.timeMs()[link + 1];
    double hours = nodes.hours(link);
    double beyondMm = BEYOND * Math.sqrt(ends.startMm2() + ends.endMm2() + driftMm2PerH * hours);
    if (riseMm > beyondMm) {
      pieces.add(CatchSeries.Kind.GAP_CATCH, to, riseMm, ends);
    } else if (-riseMm > beyondMm + DISTURBED_MM + EVAPORATED_MM_PER_H * hours) {
      pieces.add(CatchSeries.Kind.UNKNOWN, to, 0);
    } else {
      pieces.add(CatchSeries.Kind.GAP_STILL, to, 0, ends);
    }
  }

  /**
   * Adds what the rulings say up to an instant the level doesn't compare across. What no ruling
   * covers is unknown, unless it is as short as the silence between readings may be.
   */
  private void addBreak(long toMs) {
    long fromMs = pieces.endMs();
    CatchSeries.Kind last = CatchSeries.Kind.DRY_STEP;
    for (int r = RulingSearch.firstEndingAfter(rulings, fromMs); r < rulings.size(); r++) {
      Ruling ruling = rulings.get(r);
      if (ruling.interval().fromMs() >= toMs) {
        break;
      }
      if (ruling.kind() != Ruling.Kind.LATE) {
        last = kind(ruling.kind());
        addUncovered(Math.max(fromMs, ruling.interval().fromMs()), last);
        pieces.add(last, Math.min(toMs, ruling.interval().toMs()), ruling.givenMm());
      }
    }
    addUncovered(toMs, last);
  }

  private void addUncovered(long toMs, CatchSeries.Kind neighbour) {
    long lengthMs = toMs - pieces.endMs();
    int row = Math.min(record.size() - 1, record.firstRowAtOrAfter(toMs));
    boolean joins = neighbour == CatchSeries.Kind.VISIT || neighbour == CatchSeries.Kind.DRY_SPELL;
    if (joins && lengthMs <= JOINED_MS) {
      pieces.add(neighbour, toMs, 0);
    } else if (lengthMs <= new NodeBuilder.GapLimit(record).at(row)) {
      pieces.add(CatchSeries.Kind.DRY_STEP, toMs, 0);
    } else {
      pieces.add(CatchSeries.Kind.UNKNOWN, toMs, 0);
    }
  }

  private static CatchSeries.Kind kind(Ruling.Kind kind) {
    return switch (kind) {
      case ESTIMATE -> CatchSeries.Kind.ESTIMATE;
      case VISIT -> CatchSeries.Kind.VISIT;
      case DRY -> CatchSeries.Kind.DRY_SPELL;
      case LATE -> CatchSeries.Kind.LATE_CATCH;
    };
  }
}
