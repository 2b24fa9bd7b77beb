package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;

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

  private final SeasonRecord record;
  private final List<Ruling> rulings;
  private final LevelNodes nodes;
  private final Covariates covariates;
  private final CatchSeries.Builder pieces;

  private CatchEstimator(
      SeasonRecord record,
      StationSheet sheet,
      WireDepths depths,
      LevelSeries level,
      List<Ruling> rulings) {
    this.record = record;
    this.rulings = rulings;
    this.nodes = NodeBuilder.build(record, level, rulings);
    this.covariates = Covariates.of(nodes, record, sheet, depths, level);
    this.pieces = new CatchSeries.Builder(record.stampMs(0));
  }

  /**
   * Estimates the catch between the first and the last reading.
   *
   * @param record at least one row
   * @param sheet the station sheet
   * @param depths depth by wire and row
   * @param level the level at some or all rows
   * @param rulings from {@link Rulings#of}
   */
  public static CatchSeries estimate(
      SeasonRecord record,
      StationSheet sheet,
      WireDepths depths,
      LevelSeries level,
      List<Ruling> rulings) {
    return new CatchEstimator(record, sheet, depths, level, rulings).estimate();
  }

  private CatchSeries estimate() {
    long endMs = record.stampMs(record.size() - 1);
    if (nodes.size() == 0) {
      addBreak(endMs);
      return pieces.build(0);
    }
    Fit fit = fit();
    double[] caught = WetSpells.catchMm(nodes, fit.smoothed());
    addBreak(nodes.timeMs()[0]);
    for (int link = 0; link + 1 < nodes.size(); link++) {
      addLink(link, fit, caught[link]);
    }
    addBreak(endMs);
    return pieces.build(fit.driftMm2PerH());
  }

  /**
   * Learns noise and drift, and smooths, in turns: what is dry depends on them and they are learnt
   * where it is dry.
   */
  private Fit fit() {
    double[] noise = NodeNoise.varianceMm2(nodes);
    Fit fit = Fit.of(nodes, noise, noise);
    for (int round = 0; round < ROUNDS; round++) {
      double[] wet = fit.smoothed().wet();
      LevelNodes corrected = nodes.at(DriftModel.fit(nodes, covariates, noise, wet).corrected(wet));
      double correlation = NoiseCorrelation.factor(corrected, noise, wet);
      double[] effective = Arrays.stream(noise).map(v -> v * correlation).toArray();
      double whole = NoiseCorrelation.whole(corrected, noise, wet);
      double[] instant = Arrays.stream(noise).map(v -> v * whole).toArray();
      fit = Fit.of(corrected, effective, instant);
    }
    return fit;
  }

  /**
   * A level smoothed, with the drift it was smoothed for.
   *
   * @param instantMm2 whole variance of each node's noise [mm²]: no smoothed level is worse
   */
  private record Fit(SwitchingSmoother.Result smoothed, double driftMm2PerH, double[] instantMm2) {
    static Fit of(LevelNodes level, double[] noise, double[] instantMm2) {
      double drift = DryDrift.mm2PerH(level, noise);
      return new Fit(
          SwitchingSmoother.smooth(level, noise, new RainStates(drift)), drift, instantMm2);
    }

    double levelMm2(int node) {
      return Math.min(smoothed.levelMm2()[node], instantMm2[node]);
    }
  }

  private void addLink(int link, Fit fit, double caughtMm) {
    long to = nodes.timeMs()[link + 1];
    CatchSeries.Ends ends =
        new CatchSeries.Ends(
            fit.levelMm2(link), fit.levelMm2(link + 1), fit.smoothed().gain()[link]);
    double rise = fit.smoothed().catchMm()[link];
    switch (nodes.links()[link]) {
      case STEP ->
          pieces.add(
              caughtMm > 0 ? CatchSeries.Kind.WET_STEP : CatchSeries.Kind.DRY_STEP,
              to,
              caughtMm,
              ends);
      case GAP -> addGap(link, ends, rise, fit.driftMm2PerH());
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
