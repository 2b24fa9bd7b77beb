package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import org.rimebook.depth.Robust;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Wires that are noisier than they usually are beside the others in the same hour. Wind makes all
 * wires noisy alike, so it cancels.
 */
final class NoisyWireCheck implements Check {

  /** Hours at least; hours over which a median is taken; hours joined across; own choice. */
  private static final int LEAST_HOURS = 5;

  private static final int SIDE_HOURS = 2;
  private static final int MOST_BETWEEN = 6;

  /** Hours of a season that tell what is usual; own choice. */
  private static final int LEAST_USUAL = 72;

  /** Times its usual noise beside the others'; own choice. */
  private static final double LEAST_TIMES = 2;

  /** The same in usual scatters of its logarithm; own choice. */
  private static final double LEAST_SD = 6;

  /** Share of the limit, as logarithms, down to which a noisy time goes on; own choice. */
  private static final double GOES_ON = 0.6;

  /** Steps of its counter it scatters by; one that toggles between two is no noisier. */
  private static final double LEAST_STEPS = 2;

  private static final double SURE_TIMES = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.NOISY_WIRE;
  }

  @Override
  public String method() {
    return "Noise of each hour from the differences of readings that follow each other (robust;"
        + " common practice), as a ratio to each other wire's in that hour; the median of five"
        + " hours above twice the season's usual ratio and six of its usual scatters, for five"
        + " hours or more, and two steps of its counter; the time lasts while it stays above 0.6"
        + " of that, in logarithms. What is left out as noise counts to what is usual (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    HourlyNoise noise = new HourlyNoise(scene);
    List<Finding> findings = new ArrayList<>();
    for (int wire = 0; wire < scene.depths().wires(); wire++) {
      double[] excess = noise.excess(wire);
      double[] known = Arrays.stream(excess).filter(Double::isFinite).toArray();
      if (known.length < LEAST_USUAL) {
        continue;
      }
      double[] smooth = smooth(excess);
      double[] calm = Arrays.stream(smooth).filter(Double::isFinite).toArray();
      double scatter = Robust.sdInPlace(calm, calm.length);
      double leastMm = LEAST_STEPS * scene.counterStepMm(wire);
      double limit = Math.max(StrictMath.log(LEAST_TIMES), LEAST_SD * scatter);
      MarkedNoise marked = MarkedNoise.of(scene, wire);
      IntPredicate noisy =
          hour -> smooth[hour] > GOES_ON * limit && !marked.in(noise.span(hour, hour + 1));
      for (JoinedRuns.Run run : JoinedRuns.of(noisy, smooth.length, MOST_BETWEEN)) {
        Interval span = noise.span(run.fromRow(), run.toRow());
        HourlyNoise.Noise now = noise.of(wire, run);
        if (hoursBeyond(smooth, run, limit) >= LEAST_HOURS
            && now.ownMm() >= leastMm
            && !scene.explained(span)
            && !WireSpans.found(scene, FindingKind.INTERFERENCE, wire, span)
            && !WireSpans.found(scene, FindingKind.WIRE_OUT_OF_RANGE, wire, span)) {
          findings.add(finding(scene, wire, span, now));
        }
      }
    }
    findings.sort(Comparator.comparingLong(finding -> finding.span().fromMs()));
    return findings;
  }

  private static long hoursBeyond(double[] smooth, JoinedRuns.Run run, double limit) {
    return Arrays.stream(smooth, run.fromRow(), run.toRow()).filter(each -> each > limit).count();
  }

  private static double[] smooth(double[] values) {
    double[] smooth = new double[values.length];
    double[] few = new double[2 * SIDE_HOURS + 1];
    for (int i = 0; i < smooth.length; i++) {
      int count = 0;
      int to = Math.min(values.length, i + SIDE_HOURS + 1);
      for (int j = Math.max(0, i - SIDE_HOURS); j < to; j++) {
        if (Double.isFinite(values[j])) {
          few[count++] = values[j];
        }
      }
      smooth[i] = count <= SIDE_HOURS ? Double.NaN : Robust.medianInPlace(few, count);
    }
    return smooth;
  }

  private Finding finding(Scene scene, int wire, Interval span, HourlyNoise.Noise noise) {
    String name = scene.wireName(wire);
    String reason =
        Words.text(
            "Wire %s scatters by %.2f mm for %s, %.1f times as much beside the others as usual;"
                + " they scatter by %.2f mm.",
            name,
            noise.ownMm(),
            Wording.duration(span.lengthMs()),
            noise.times(),
            noise.othersMm());
    return Finding.doubting(
        kind(),
        Finding.Subject.wire(span, name),
        reason,
        Math.min(1, 0.3 + 0.6 * noise.times() / SURE_TIMES),
        Proposals.bad(span, List.of(name), BadReason.NOISE, "Noisier than the others."));
  }
}
