package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimebook.depth.Robust;
import org.rimebook.depth.Screening;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Wires that give depths no bucket of the gauge can have, for more than single readings. */
final class OutOfRangeCheck implements Check {

  /** Out of range for at least this long [ms] and so many readings; own choice. */
  private static final long LEAST_MS = 30 * 60_000;

  private static final int LEAST_READINGS = 6;
  private static final long MOST_BETWEEN_MS = 3_600_000;
  private static final double SURE_MS = 24 * 3_600_000.0;

  @Override
  public FindingKind kind() {
    return FindingKind.WIRE_OUT_OF_RANGE;
  }

  @Override
  public String method() {
    return "At least 6 readings over half an hour below -10 mm or above 1.1 times the bucket's"
        + " capacity (own choice; a test of plausible values: common practice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Pace pace = Pace.of(scene.record());
    List<Finding> findings = new ArrayList<>();
    for (int wire = 0; wire < scene.depths().wires(); wire++) {
      int one = wire;
      for (JoinedRuns.Run run :
          JoinedRuns.of(
              row -> scene.depths().screening(one, row) == Screening.OUT_OF_RANGE,
              scene.record().size(),
              pace.readings(MOST_BETWEEN_MS))) {
        Interval span = pace.span(run.fromRow(), run.toRow());
        boolean longEnough = run.hits() >= LEAST_READINGS && span.lengthMs() >= LEAST_MS;
        if (longEnough && !explained(scene, wire, span)) {
          findings.add(finding(scene, wire, run, span));
        }
      }
    }
    findings.sort(Comparator.comparingLong(finding -> finding.span().fromMs()));
    return findings;
  }

  private static boolean explained(Scene scene, int wire, Interval span) {
    return scene.explained(span)
        || scene.found(FindingKind.UNMARKED_VISIT, span)
        || WireSpans.found(scene, FindingKind.SILENT_WIRE, wire, span)
        || WireSpans.calibrationDoubted(scene, wire, span);
  }

  private Finding finding(Scene scene, int wire, JoinedRuns.Run run, Interval span) {
    String name = scene.wireName(wire);
    double[] hertz = new double[run.hits()];
    int count = 0;
    for (int row = run.fromRow(); row < run.toRow(); row++) {
      if (scene.depths().screening(wire, row) == Screening.OUT_OF_RANGE) {
        hertz[count++] = scene.record().frequency(wire).get(row);
      }
    }
    String reason =
        Words.text(
            "Wire %s gives a frequency of about %.0f for %s (%d readings), which no depth of the"
                + " bucket has.",
            name,
            Robust.medianInPlace(hertz, count),
            Wording.duration(span.lengthMs()),
            run.hits());
    return Finding.harmless(
        kind(),
        Finding.Subject.wire(span, name),
        reason,
        Math.min(1, 0.5 + 0.5 * span.lengthMs() / SURE_MS),
        Proposals.bad(span, List.of(name), BadReason.WIRE_FAULT, "Out of range."));
  }
}
