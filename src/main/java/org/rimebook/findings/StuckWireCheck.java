package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Wires whose frequency stays the same while it should vary. Readings of a fine counter always
 * vary; those of a coarse one stay the same for days when nothing falls, so there it is the other
 * wires that tell.
 */
final class StuckWireCheck implements Check {

  /** A wire is stuck for at least this long [ms] and so many readings; own choice. */
  private static final long LEAST_MS = 3_600_000;

  private static final int LEAST_READINGS = 12;

  /** Runs that should have ended so many times over while it was stuck; own choice. */
  private static final double LEAST_ENDS = 16;

  /** What the other wires move by while it is stuck [mm], and in steps of its counter. */
  private static final double LEAST_MOVE_MM = 0.6;

  private static final double LEAST_MOVE_STEPS = 4;

  /** Blocks whose median counts as one level of a wire. */
  private static final int SMOOTHED = 3;

  private static final double SURE_MS = 24 * 3_600_000.0;
  private static final int WINDOW = 30;

  @Override
  public FindingKind kind() {
    return FindingKind.STUCK_WIRE;
  }

  @Override
  public String method() {
    return "A frequency that stays within the counter's smallest step for at least an hour and 12"
        + " readings (a test of persistence: common practice), where runs of the wire should have"
        + " ended 16 times over going by the quietest twentieth of its own season, or every other"
        + " wire moved by 0.6 mm and 4 steps of its counter (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Pace pace = Pace.of(scene.record());
    List<Finding> findings = new ArrayList<>();
    for (int wire = 0; wire < scene.depths().wires(); wire++) {
      HeldRuns held = scene.facts().held(wire);
      double ends = held.endsPerReading(WINDOW);
      double stepMm = scene.counterStepMm(wire);
      for (HeldRuns.Held run : held.runs()) {
        Interval span = pace.span(run.fromRow(), run.toRow());
        boolean longEnough = run.readings() >= LEAST_READINGS && span.lengthMs() >= LEAST_MS;
        if (longEnough && inUse(scene, wire, run) && !scene.explained(span)) {
          judge(scene, wire, run, new Usual(ends, stepMm)).ifPresent(findings::add);
        }
      }
    }
    findings.sort(Comparator.comparingLong(finding -> finding.span().fromMs()));
    return findings;
  }

  /**
   * What is usual of a wire.
   *
   * @param endsPerReading how often its runs end at least
   * @param stepMm smallest step of its counter [mm]
   */
  private record Usual(double endsPerReading, double stepMm) {}

  private Optional<Finding> judge(Scene scene, int wire, HeldRuns.Held run, Usual usual) {
    Interval span = Pace.of(scene.record()).span(run.fromRow(), run.toRow());
    double movedMm = othersMoveMm(scene, wire, span);
    boolean moved = movedMm >= Math.max(LEAST_MOVE_MM, LEAST_MOVE_STEPS * usual.stepMm);
    boolean still = run.readings() * usual.endsPerReading >= LEAST_ENDS;
    if (!moved && !still) {
      return Optional.empty();
    }
    String name = scene.wireName(wire);
    String others = movedMm > 0 ? Words.text(" The other wires moved by %.2f mm.", movedMm) : "";
    String own =
        still
            ? Words.text(
                " Usually it changes within %.0f readings at the latest.",
                Math.ceil(1 / usual.endsPerReading))
            : "";
    String reason =
        Words.text(
                "Wire %s gives the same frequency, %.2f, for %s (%d readings).",
                name,
                scene.record().frequency(wire).get(run.fromRow()),
                Wording.duration(span.lengthMs()),
                run.readings())
            + others
            + own;
    return Optional.of(
        Finding.doubting(
            kind(),
            Finding.Subject.wire(span, name),
            reason,
            Math.min(1, 0.6 + 0.4 * span.lengthMs() / SURE_MS),
            Proposals.bad(span, List.of(name), BadReason.WIRE_FAULT, "Always the same.")));
  }

  private static boolean inUse(Scene scene, int wire, HeldRuns.Held run) {
    int used = 0;
    for (int row = run.fromRow(); row < run.toRow(); row++) {
      used += scene.depths().used(wire, row) ? 1 : 0;
    }
    return 2 * used >= run.readings();
  }

  /** Least that another wire moved between two times of a span [mm]; 0 when none is in use. */
  private static double othersMoveMm(Scene scene, int wire, Interval span) {
    Blocks blocks = scene.blocks();
    int from = blocks.at(span.fromMs()) + 1;
    int to = blocks.at(span.toMs() - 1);
    return IntStream.range(0, scene.depths().wires())
        .filter(other -> other != wire)
        .mapToDouble(other -> moveMm(blocks, other, from, to))
        .filter(Double::isFinite)
        .min()
        .orElse(0);
  }

  private static double moveMm(Blocks blocks, int wire, int from, int to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double[] few = new double[SMOOTHED];
    for (int block = from; block + SMOOTHED <= to; block++) {
      int start = block;
      Arrays.setAll(few, i -> blocks.depthMm(wire, start + i));
      if (Arrays.stream(few).allMatch(Double::isFinite)) {
        double mm = Robust.medianInPlace(few, SMOOTHED);
        low = Math.min(low, mm);
        high = Math.max(high, mm);
      }
    }
    return high >= low ? high - low : Double.NaN;
  }
}
