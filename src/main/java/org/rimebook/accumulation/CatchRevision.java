package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.Optional;
import org.rimebook.depth.LevelSeries;
import org.rimebook.station.Interval;

/**
 * Estimates part of a season anew, where readings or rulings have changed, and joins it to the
 * estimate as it was. What was learnt from the season is held. The smoother takes up its way where
 * it was before the change, and goes on on both sides to where it knows again what it knew; so how
 * far the change reaches is found out and not assumed.
 *
 * <p>Limits are our own choice.
 */
public final class CatchRevision {

  /**
   * Readings so far beside a change have other departures, which are taken without a day's mean.
   */
  private static final long DEPARTURES_MS = 37 * 3_600_000L;

  /** Noise is judged over so many hours on either side. */
  private static final long NOISE_MS = 3 * 3_600_000L;

  /** First look at how far a change reaches; each further look is three times as wide. */
  private static final long FIRST_LOOK_MS = 6 * 3_600_000L;

  private final LevelEvidence before;
  private final LevelEvidence now;
  private final CatchBasis basis;
  private final Interval changed;
  private final Interval fresh;

  private CatchRevision(
      LevelEvidence before, LevelEvidence now, CatchBasis basis, Interval changed) {
    this.before = before;
    this.now = now;
    this.basis = basis;
    this.changed = changed;
    long marginMs = basis.covariates().departures().isEmpty() ? NOISE_MS : DEPARTURES_MS;
    this.fresh = new Interval(changed.fromMs() - marginMs, changed.toMs() + marginMs);
  }

  /**
   * A season estimated anew in part.
   *
   * @param estimate the catch, and what is held of what was learnt
   * @param part the part it is new in
   */
  public record Revised(Estimate estimate, Interval part) {}

  /**
   * Estimates anew where something has changed.
   *
   * @param estimate the season as it was, estimated throughout
   * @param before what it was estimated from
   * @param now what it is estimated from now; its level is the same but for constants outside the
   *     change
   * @param changed where readings, the level or rulings have changed
   * @return empty when nothing was learnt from the season yet
   */
  public static Optional<Revised> of(
      Estimate estimate, LevelEvidence before, LevelEvidence now, Interval changed) {
    return estimate
        .basis()
        .flatMap(basis -> new CatchRevision(before, now, basis, changed).revised(estimate));
  }

  private Optional<Revised> revised(Estimate estimate) {
    for (long lookMs = FIRST_LOOK_MS; ; lookMs *= 3) {
      int last = basis.nodes().size() - 1;
      int from = mark(basis.nodes().lastAtOrBefore(fresh.fromMs() - lookMs));
      int to = mark(basis.nodes().lastAtOrBefore(fresh.toMs() + lookMs)) + SmootherMarks.EVERY;
      boolean whole = from == 0 && to >= last;
      Stretch stretch = new Stretch(from, Math.min(to, last));
      if (stretch.nodes.size() == 0) {
        if (whole) {
          return Optional.empty();
        }
        continue;
      }
      Optional<Interval> part = stretch.part();
      if (part.isPresent() && (whole || stretch.fits())) {
        CatchSeries series = CatchEstimator.pieces(now, stretch.nodes, stretch.fit, part.get());
        Estimate joined =
            new Estimate(
                estimate.series().with(series),
                estimate.learnt(),
                () -> estimate.judgement().with(stretch.fit.judgement()),
                Optional.empty());
        return Optional.of(new Revised(joined, part.get()));
      }
      if (whole) {
        return Optional.empty();
      }
    }
  }

  private static int mark(int node) {
    return Math.max(0, node) / SmootherMarks.EVERY * SmootherMarks.EVERY;
  }

  /** Nodes of the season from one to another, made and smoothed anew. */
  private final class Stretch {
    private final int seasonFrom;
    private final int seasonTo;
    private final LevelNodes nodes;
    private final CatchEstimator.Fit fit;
    private final double liftMm;

    /**
     * @param seasonFrom the first node as it was, one with a mark
     * @param seasonTo the last, one with a mark or the last of all
     */
    Stretch(int seasonFrom, int seasonTo) {
      this.seasonFrom = seasonFrom;
      this.seasonTo = seasonTo;
      LevelNodes wide = wide();
      int from = atStart() ? 0 : Math.max(0, wide.lastAtOrBefore(time(seasonFrom)));
      int to = atEnd() ? wide.size() : wide.lastAtOrBefore(time(seasonTo)) + 1;
      this.nodes = wide.slice(from, Math.max(from, to));
      if (nodes.size() == 0) {
        this.fit = basis.fit();
        this.liftMm = 0;
        return;
      }
      int[] twin = twins(wide);
      Covariates covariates =
          Covariates.within(
              wide, now, basis.covariates(), twin, i -> fresh.contains(wide.timeMs()[i]));
      double[] wet = Arrays.stream(twin).mapToDouble(this::wet).toArray();
      DriftModel model = basis.model().at(wide, covariates);
      double[] noise = noise(wide, covariates, twin);
      LevelJudgement judgement = LevelJudgement.of(wide, noise, model.drift(wet));
      double[] level = Arrays.copyOfRange(model.corrected(wet), from, from + nodes.size());
      LevelNodes was = basis.fit().corrected();
      double startMm = atStart() ? 0 : was.levelMm()[seasonFrom] - level[0];
      Arrays.setAll(level, i -> level[i] + startMm);
      this.liftMm = atEnd() ? 0 : level[level.length - 1] - was.levelMm()[seasonTo];
      this.fit =
          fit(
              nodes.at(level),
              Arrays.copyOfRange(noise, from, from + nodes.size()),
              judgement,
              Arrays.copyOfRange(model.wetDoubtMm(wet), from, from + nodes.size()));
    }

    private boolean atStart() {
      return seasonFrom == 0;
    }

    private boolean atEnd() {
      return seasonTo == basis.nodes().size() - 1;
    }

    private long time(int seasonNode) {
      return basis.nodes().timeMs()[seasonNode];
    }

    /** The nodes and those far enough beside them that their departures are known. */
    private LevelNodes wide() {
      int first =
          atStart()
              ? 0
              : Math.max(0, basis.nodes().lastAtOrBefore(time(seasonFrom) - DEPARTURES_MS));
      int last = basis.nodes().lastAtOrBefore(time(seasonTo) + DEPARTURES_MS);
      int firstIndex = first == 0 ? 0 : indexNow(basis.nodes().firstIndex()[first]);
      int endIndex =
          atEnd() || last + 1 >= basis.nodes().size()
              ? now.level().size()
              : indexNow(basis.nodes().firstIndex()[last + 1]);
      return NodeBuilder.build(now, firstIndex, Math.max(firstIndex, endIndex));
    }

    private int indexNow(int indexBefore) {
      LevelSeries was = before.level();
      return now.level().indexAtOrAfter(was.row(indexBefore));
    }

    private int[] twins(LevelNodes wide) {
      int[] twin = new int[wide.size()];
      long[] times = basis.nodes().timeMs();
      int at = wide.size() == 0 ? 0 : Math.max(0, basis.nodes().lastAtOrBefore(wide.timeMs()[0]));
      for (int i = 0; i < twin.length; i++) {
        while (at + 1 < times.length && times[at + 1] <= wide.timeMs()[i]) {
          at++;
        }
        twin[i] = at;
      }
      return twin;
    }

    private double wet(int seasonLink) {
      return basis.wet()[seasonLink];
    }

    private double[] noise(LevelNodes wide, Covariates covariates, int[] twin) {
      double[] noise = NodeNoise.varianceMm2(wide, covariates.windMs(), basis.noise().byWind());
      for (int i = 0; i < noise.length; i++) {
        long time = wide.timeMs()[i];
        if (time < changed.fromMs() - NOISE_MS || time > changed.toMs() + NOISE_MS) {
          noise[i] = basis.noise().varianceMm2()[twin[i]];
        }
      }
      return noise;
    }

    private CatchEstimator.Fit fit(
        LevelNodes level, double[] noise, LevelJudgement judgement, double[] wetDoubtMm) {
      Learnt learnt = basis.fit().learnt();
      Smoothing.Noise scaled =
          new Smoothing.Noise(
              Arrays.stream(noise).map(v -> v * learnt.noiseCorrelation()).toArray(),
              Arrays.stream(noise).map(v -> v * learnt.wholeNoise()).toArray());
      SwitchingSmoother.Bounds bounds =
          new SwitchingSmoother.Bounds(
              atStart()
                  ? Optional.empty()
                  : Optional.of(marks().filtered().get(markOf(seasonFrom))),
              atEnd()
                  ? Optional.empty()
                  : Optional.of(marks().backwards().get(markOf(seasonTo)).lifted(liftMm)));
      Smoothing smoothing =
          Smoothing.within(level, scaled, basis.fit().smoothing().driftMm2PerH(), bounds);
      return new CatchEstimator.Fit(
          level, smoothing, WetSpells.of(level, smoothing), learnt, judgement, wetDoubtMm);
    }

    private SmootherMarks marks() {
      return basis.fit().smoothing().result().marks();
    }

    private static int markOf(int node) {
      return node / SmootherMarks.EVERY;
    }

    /** Whether the smoother knows at both ends what it knew. */
    boolean fits() {
      SmootherMarks here = fit.smoothing().result().marks();
      boolean start =
          atStart()
              || here.backwards().get(0).isAsGoodAs(marks().backwards().get(markOf(seasonFrom)));
      boolean end =
          atEnd()
              || here.last().isAsGoodAs(marks().filtered().get(markOf(seasonTo)).lifted(liftMm));
      return start && end;
    }

    /** From the first to the last node it is quiet about, then as now; empty without any. */
    Optional<Interval> part() {
      long startMs = now.record().stampMs(0);
      long endMs = now.record().stampMs(now.record().size() - 1);
      int first = atStart() ? 0 : quiet(0, 1);
      int last = atEnd() ? nodes.size() - 1 : quiet(nodes.size() - 1, -1);
      boolean around =
          first >= 0
              && last >= 0
              && (atStart() || nodes.timeMs()[first] <= changed.fromMs())
              && (atEnd() || nodes.timeMs()[last] >= changed.toMs());
      return around
          ? Optional.of(
              new Interval(
                  atStart() ? startMs : nodes.timeMs()[first],
                  atEnd() ? endMs : nodes.timeMs()[last]))
          : Optional.empty();
    }

    private int quiet(int start, int step) {
      for (int i = start; i >= 0 && i < nodes.size(); i += step) {
        int twin = basis.nodes().lastAtOrBefore(nodes.timeMs()[i]);
        boolean same = twin >= 0 && time(twin) == nodes.timeMs()[i];
        if (same
            && WetSpells.quietAbout(nodes, fit.smoothing(), i)
            && WetSpells.quietAbout(basis.nodes(), basis.fit().smoothing(), twin)) {
          return i;
        }
      }
      return -1;
    }
  }
}
