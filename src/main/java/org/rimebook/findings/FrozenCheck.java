package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.Robust;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * A frozen bucket: in deep cold every wire's readings scatter far less than they do in the same
 * wind. What falls on the ice still weighs, so totals stand; snow on it may melt in late.
 */
final class FrozenCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** Colder than that on average [°C]; a charge keeps from freezing well below 0 °C. Own choice. */
  private static final double COLD_DEG_C = -4;

  /** Scatter against the usual in the same wind; own choice. */
  private static final double STILL = 0.5;

  /** Scatter is compared over so many hours, and stays low for at least as long; own choice. */
  private static final int WINDOW_HOURS = 6;

  private static final int LEAST_HOURS = 12;

  /** Wind is sorted into bins of this width [m/s]. */
  private static final double BIN_MS = 1;

  private static final int BINS = 20;

  /** A bin needs as many blocks, and a usual scatter above what a counter makes up [mm]. */
  private static final int LEAST_BLOCKS = 100;

  private static final double LEAST_NOISE_MM = 0.005;

  /** More blocks without any scatter than this share: the counter is too coarse to tell. */
  private static final double MOST_SILENT = 0.05;

  @Override
  public FindingKind kind() {
    return FindingKind.FROZEN;
  }

  @Override
  public String method() {
    return "Scatter of each wire's readings against its usual scatter in the same wind, medians"
        + " over 6 h: below half of it on every wire for at least 12 h, below -4 °C (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    double[] airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    double[] windMs = blocks.channel(Channel.WIND_SPEED);
    List<Finding> findings = new ArrayList<>();
    if (airDegC.length == 0 || windMs.length == 0 || scene.depths().wires() < 2) {
      return findings;
    }
    double[][] scatter = new double[scene.depths().wires()][];
    for (int wire = 0; wire < scatter.length; wire++) {
      scatter[wire] = againstUsual(blocks, wire, windMs);
    }
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int from = -1;
    int last = -1;
    int hours = blocks.size() / hour;
    for (int step = 0; step <= hours; step++) {
      boolean still = step < hours && still(scatter, step * hour, hour);
      if (still) {
        from = from < 0 ? step : from;
        last = step;
      } else if (from >= 0 && (step - last > WINDOW_HOURS || step == hours)) {
        add(findings, scene, airDegC, new Interval(from * (long) hour, (last + 1) * (long) hour));
        from = -1;
      }
    }
    return findings;
  }

  /** Whether every wire scatters little in the hours around. */
  private static boolean still(double[][] scatter, int block, int hour) {
    int compared = 0;
    for (double[] wire : scatter) {
      double[] around =
          Arrays.stream(
                  wire,
                  Math.max(0, block - WINDOW_HOURS / 2 * hour),
                  Math.min(wire.length, block + WINDOW_HOURS / 2 * hour))
              .filter(Double::isFinite)
              .toArray();
      if (around.length >= WINDOW_HOURS * hour / 2) {
        if (!(Robust.medianInPlace(around, around.length) < STILL)) {
          return false;
        }
        compared++;
      }
    }
    return compared >= 2;
  }

  private void add(List<Finding> findings, Scene scene, double[] airDegC, Interval steps) {
    int from = (int) steps.fromMs();
    int to = (int) steps.toMs();
    Interval span = scene.blocks().span(from, to);
    double degC = Means.of(airDegC, from, to);
    if (span.lengthMs() < LEAST_HOURS * HOUR_MS || !(degC < COLD_DEG_C) || scene.explained(span)) {
      return;
    }
    String reason =
        Words.text(
            "For %s at %s on average the readings of every wire scattered less than half as much"
                + " as usual in the same wind. What falls on ice still weighs; totals stand.",
            Wording.duration(span.lengthMs()), Wording.degC(degC));
    findings.add(
        Finding.harmless(
            kind(),
            Finding.Subject.bucket(span),
            reason,
            Math.min(1, 0.4 + span.lengthMs() / (10.0 * 24 * HOUR_MS)),
            Proposals.remark(span, "The bucket was frozen.")));
  }

  /** Scatter of a wire in each block as a share of its usual in such wind; NaN when not known. */
  private static double[] againstUsual(Blocks blocks, int wire, double[] windMs) {
    double[] usual = usualMm(blocks, wire, windMs);
    double[] shares = new double[blocks.size()];
    for (int block = 0; block < shares.length; block++) {
      int bin = bin(windMs[block]);
      shares[block] = bin < 0 ? Double.NaN : blocks.noiseMm(wire, block) / usual[bin];
    }
    return shares;
  }

  /** Median scatter by wind [mm]; NaN where there is too little, or the counter is too coarse. */
  private static double[] usualMm(Blocks blocks, int wire, double[] windMs) {
    double[][] values = new double[BINS][blocks.size()];
    int[] counts = new int[BINS];
    int silent = 0;
    int known = 0;
    for (int block = 0; block < blocks.size(); block++) {
      int bin = bin(windMs[block]);
      double noise = blocks.noiseMm(wire, block);
      if (bin >= 0 && Double.isFinite(noise)) {
        values[bin][counts[bin]++] = noise;
        silent += noise == 0 ? 1 : 0;
        known++;
      }
    }
    double[] usual = new double[BINS];
    for (int bin = 0; bin < BINS; bin++) {
      boolean enough = counts[bin] >= LEAST_BLOCKS && silent <= MOST_SILENT * known;
      double median = enough ? Robust.medianInPlace(values[bin], counts[bin]) : Double.NaN;
      usual[bin] = median >= LEAST_NOISE_MM ? median : Double.NaN;
    }
    return usual;
  }

  private static int bin(double windMs) {
    return Double.isFinite(windMs) ? (int) Math.min(BINS - 1, Math.max(0, windMs / BIN_MS)) : -1;
  }
}
