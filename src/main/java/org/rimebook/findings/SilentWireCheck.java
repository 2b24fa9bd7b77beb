package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.rimebook.depth.RowRange;
import org.rimebook.depth.Screening;
import org.rimebook.depth.WireDepths;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Wires that give nothing, or jump about and then give nothing, while others go on; and all wires
 * silent together while the logger goes on.
 */
final class SilentWireCheck implements Check {

  /** A wire is silent for at least this long [ms] and so many readings; own choice. */
  private static final long LEAST_MS = 3_600_000;

  private static final int LEAST_READINGS = 6;

  /** Readings that come through for no longer than this don't end a silence [ms]; own choice. */
  private static final long MOST_BETWEEN_MS = 3 * 3_600_000;

  /** Share of the readings that may come through without being looked at; own choice. */
  private static final double ALL_BUT = 0.99;

  private static final double SURE_MS = 48 * 3_600_000.0;

  @Override
  public FindingKind kind() {
    return FindingKind.SILENT_WIRE;
  }

  @Override
  public String method() {
    return "At least 6 readings in a row and an hour without a frequency of one wire while others"
        + " have one, joined across shorter returns; before and after, hours in which 8 % of its"
        + " readings are missing, out of range, spikes or 3 mm off from every other wire's usual"
        + " distance (own choice; a wire that jumps about before it fails: common practice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Pace pace = Pace.of(scene.record());
    WireDepths depths = scene.depths();
    List<Finding> findings = new ArrayList<>();
    for (JoinedRuns.Run run : runs(pace, row -> silentAll(depths, row))) {
      Interval span = pace.span(run.fromRow(), run.toRow());
      if (!scene.explained(span) && !supplyFailed(scene, span)) {
        findings.add(ofAll(span));
      }
    }
    for (int wire = 0; wire < depths.wires(); wire++) {
      int one = wire;
      int last = 0;
      for (JoinedRuns.Run run :
          runs(pace, row -> silent(depths, one, row) && !silentAll(depths, row))) {
        Optional<Finding> finding =
            run.fromRow() < last ? Optional.empty() : of(scene, pace, wire, run);
        if (finding.isPresent()) {
          findings.add(finding.get());
          last = scene.record().firstRowAtOrAfter(finding.get().span().toMs());
        }
      }
    }
    findings.sort(Comparator.comparingLong(finding -> finding.span().fromMs()));
    return findings;
  }

  /** Readings that go with the supply are a finding about the supply. */
  private static boolean supplyFailed(Scene scene, Interval span) {
    return scene.found(FindingKind.LOW_SUPPLY, span);
  }

  private static boolean silent(WireDepths depths, int wire, int row) {
    return depths.screening(wire, row) == Screening.MISSING;
  }

  private static boolean silentAll(WireDepths depths, int row) {
    for (int wire = 0; wire < depths.wires(); wire++) {
      if (!silent(depths, wire, row)) {
        return false;
      }
    }
    return true;
  }

  private static List<JoinedRuns.Run> runs(Pace pace, IntPredicate silent) {
    return JoinedRuns.of(silent, pace.record().size(), pace.readings(MOST_BETWEEN_MS)).stream()
        .filter(
            run ->
                run.hits() >= LEAST_READINGS
                    && pace.span(run.fromRow(), run.toRow()).lengthMs() >= LEAST_MS)
        .toList();
  }

  private Finding ofAll(Interval span) {
    String reason =
        Words.text(
            "No wire gives a frequency for %s while the logger goes on writing.",
            Wording.duration(span.lengthMs()));
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        strength(span),
        Proposals.bad(span, List.of(), BadReason.LOGGER, "No wire gave a frequency."));
  }

  private Optional<Finding> of(Scene scene, Pace pace, int wire, JoinedRuns.Run run) {
    int from = new Erratic(scene, pace, wire, run.fromRow()).startBefore(run.fromRow());
    int to = new Erratic(scene, pace, wire, run.toRow()).endAfter(run.toRow());
    Interval span = pace.span(from, to);
    if (scene.explained(span) || supplyFailed(scene, span)) {
      return Optional.empty();
    }
    String name = scene.wireName(wire);
    StringBuilder reason = new StringBuilder();
    reason.append(
        Words.text(
            "Wire %s gives no frequency for %s while others do.",
            name, Wording.duration(pace.span(run.fromRow(), run.toRow()).lengthMs())));
    if (from < run.fromRow()) {
      reason.append(" " + jumping(pace, from, run.fromRow(), "before"));
    }
    if (to > run.toRow()) {
      reason.append(" " + jumping(pace, run.toRow(), to, "after"));
    }
    return Optional.of(
        new Finding(
            kind(),
            span,
            List.of(name),
            reason.toString(),
            strength(span),
            Proposals.bad(span, List.of(name), BadReason.WIRE_FAULT, "Jumps about or silent."),
            doubted(scene, pace, wire, run, new RowRange(from, to))));
  }

  private static String jumping(Pace pace, int fromRow, int toRow, String when) {
    return Words.text(
        "For %s %s, readings are missing or wild.",
        Wording.duration(pace.span(fromRow, toRow).lengthMs()), when);
  }

  /** Only readings that come through can spoil a total. */
  private static Optional<Interval> doubted(
      Scene scene, Pace pace, int wire, JoinedRuns.Run run, RowRange whole) {
    int from = whole.fromRow();
    int to = whole.toRow();
    boolean through = run.hits() < ALL_BUT * run.length();
    int start = used(scene, wire, from, run.fromRow()) ? from : through ? run.fromRow() : to;
    int end = used(scene, wire, run.toRow(), to) ? to : through ? run.toRow() : run.fromRow();
    if (start < run.fromRow() && end <= run.fromRow()) {
      return Optional.of(pace.span(start, run.fromRow()));
    }
    if (start >= to && end == to) {
      return Optional.of(pace.span(run.toRow(), to));
    }
    return start < end ? Optional.of(pace.span(start, end)) : Optional.empty();
  }

  private static boolean used(Scene scene, int wire, int fromRow, int toRow) {
    for (int row = fromRow; row < toRow; row++) {
      if (scene.depths().used(wire, row)) {
        return true;
      }
    }
    return false;
  }

  private static double strength(Interval span) {
    return Math.min(1, 0.6 + 0.4 * span.lengthMs() / SURE_MS);
  }
}
