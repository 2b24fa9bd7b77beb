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
    SwitchingSmoother.Result smoothed = fit.smoothed();
    double drift = fit.driftMm2PerH();
    double[] caught = WetSpells.catchMm(nodes, smoothed);
    addBreak(nodes.timeMs()[0]);
    for (int link = 0; link + 1 < nodes.size(); link++) {
      addLink(link, smoothed, caught[link], drift);
    }
    addBreak(endMs);
    return pieces.build(drift);
  }

  /**
   * Learns noise and drift, and smooths, in turns: what is dry depends on them and they are learnt
   * where it is dry.
   */
  private Fit fit() {
    double[] noise = NodeNoise.varianceMm2(nodes);
    Fit fit = Fit.of(nodes, noise);
    for (int round = 0; round < ROUNDS; round++) {
      double[] wet = fit.smoothed().wet();
      LevelNodes corrected = nodes.at(DriftModel.fit(nodes, covariates, noise, wet).corrected(wet));
      double correlation = NoiseCorrelation.factor(corrected, noise, wet);
      double[] effective = Arrays.stream(noise).map(v -> v * correlation).toArray();
      fit = Fit.of(corrected, effective);
    }
    return fit;
  }

  /** A level smoothed with the drift it was smoothed for. */
  private record Fit(SwitchingSmoother.Result smoothed, double driftMm2PerH) {
    static Fit of(LevelNodes level, double[] noise) {
      double drift = DryDrift.mm2PerH(level, noise);
      return new Fit(SwitchingSmoother.smooth(level, noise, new RainStates(drift)), drift);
    }
  }

  private void addLink(
      int link, SwitchingSmoother.Result smoothed, double caughtMm, double driftMm2PerH) {
    long to = nodes.timeMs()[link + 1];
    CatchSeries.Ends ends =
        new CatchSeries.Ends(
            smoothed.levelMm2()[link], smoothed.levelMm2()[link + 1], smoothed.gain()[link]);
    double rise = smoothed.catchMm()[link];
    switch (nodes.links()[link]) {
      case STEP ->
          pieces.add(
              caughtMm > 0 ? CatchSeries.Kind.WET_STEP : CatchSeries.Kind.DRY_STEP,
              to,
              caughtMm,
              ends);
      case GAP -> {
        double variance = ends.startMm2() + ends.endMm2() + driftMm2PerH * nodes.hours(link);
        boolean rose = rise > BEYOND * Math.sqrt(variance);
        pieces.add(
            rose ? CatchSeries.Kind.GAP_CATCH : CatchSeries.Kind.GAP_STILL,
            to,
            rose ? rise : 0,
            ends);
      }
      case LATE ->
          pieces.add(
              rise > 0 ? CatchSeries.Kind.LATE_CATCH : CatchSeries.Kind.GAP_STILL,
              to,
              Math.max(0, rise),
              ends);
      case BREAK -> addBreak(to);
    }
  }

  /**
   * Adds what the rulings say up to an instant the level doesn't compare across. What no ruling
   * covers is unknown, unless it is as short as the silence between readings may be.
   */
  private void addBreak(long toMs) {
    long fromMs = pieces.endMs();
    for (int r = RulingSearch.firstEndingAfter(rulings, fromMs); r < rulings.size(); r++) {
      Ruling ruling = rulings.get(r);
      if (ruling.interval().fromMs() >= toMs) {
        break;
      }
      long from = Math.max(fromMs, ruling.interval().fromMs());
      long to = Math.min(toMs, ruling.interval().toMs());
      CatchSeries.Kind kind = kind(ruling.kind());
      addUncovered(from, kind);
      pieces.add(kind, to, ruling.givenMm());
    }
    boolean ruled = pieces.endMs() > fromMs;
    addUncovered(toMs, ruled ? lastKind() : CatchSeries.Kind.DRY_STEP);
  }

  private CatchSeries.Kind lastKind() {
    return kind(rulings.get(RulingSearch.firstEndingAfter(rulings, pieces.endMs() - 1)).kind());
  }

  private void addUncovered(long toMs, CatchSeries.Kind neighbour) {
    long lengthMs = toMs - pieces.endMs();
    int row = Math.min(record.size() - 1, record.firstRowAtOrAfter(toMs));
    boolean brief = lengthMs <= new NodeBuilder.GapLimit(record).at(row);
    boolean joins = neighbour == CatchSeries.Kind.VISIT || neighbour == CatchSeries.Kind.DRY_SPELL;
    if (brief) {
      pieces.add(joins ? neighbour : CatchSeries.Kind.DRY_STEP, toMs, 0);
    } else {
      pieces.add(CatchSeries.Kind.UNKNOWN, toMs, 0);
    }
  }

  private static CatchSeries.Kind kind(Ruling.Kind kind) {
    return switch (kind) {
      case ESTIMATE -> CatchSeries.Kind.ESTIMATE;
      case VISIT -> CatchSeries.Kind.VISIT;
      case DRY -> CatchSeries.Kind.DRY_SPELL;
      case LATE -> CatchSeries.Kind.UNKNOWN;
    };
  }
}
