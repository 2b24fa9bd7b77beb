package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Wires that creep away from the others over days to weeks, or whose zero shifts at once. With
 * three wires or more the others tell which one it is.
 */
final class DriftingWireCheck implements Check {

  /** Steps between readings aren't searched for further than this from a night [ms]. */
  private static final double SURE_MM = 2;

  @Override
  public FindingKind kind() {
    return FindingKind.DRIFTING_WIRE;
  }

  @Override
  public String method() {
    return "The difference of each two wires from midnight to six, less what goes with load, load"
        + " times temperature and their movement around noon, and with a constant between visits:"
        + " straight creeps of 0.4 mm and 0.015 mm/d over 5 days and shifts of 0.25 mm that suit"
        + " it best, one after the other (matching pursuit: Mallat and Zhang 1993, from memory;"
        + " limits own choice). The wire is the one that differs from all others (comparing the"
        + " wires pairwise: common practice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    List<WireCreep> found = WireCreeps.of(scene);
    List<Finding> findings = new ArrayList<>();
    for (WireCreep creep : found) {
      boolean within =
          found.stream()
              .anyMatch(
                  other ->
                      other.creeps()
                          && !creep.creeps()
                          && other.wires().containsAll(creep.wires())
                          && other.span().fromMs() - Nights.DAY_MS < creep.span().fromMs()
                          && other.span().toMs() + Nights.DAY_MS > creep.span().toMs());
      boolean known = creep.wires().stream().anyMatch(wire -> known(scene, wire, creep.span()));
      if (!within && !known && !scene.explained(creep.span())) {
        findings.add(finding(scene, creep));
      }
    }
    findings.sort(Comparator.comparingLong(finding -> finding.span().fromMs()));
    return findings;
  }

  /** Whether something else was found of the wire, or said of it, that makes it differ. */
  private static boolean known(Scene scene, int wire, Interval span) {
    return WireSpans.calibrationDoubted(scene, wire, span)
        || WireSpans.touched(scene, wire, span)
        || scene.leftOut(wire, span);
  }

  private Finding finding(Scene scene, WireCreep creep) {
    List<String> names = creep.wires().stream().map(scene::wireName).toList();
    boolean one = names.size() == 1;
    Interval span = creep.span();
    String subject =
        one
            ? Words.text(
                "Wire %s %s the others",
                names.get(0), creep.creeps() ? "creeps away from" : "shifts against")
            : Words.text(
                "Wires %s %s each other",
                Wording.names(names), creep.creeps() ? "creep away from" : "shift against");
    double days = (double) span.lengthMs() / Nights.DAY_MS;
    String how =
        creep.creeps()
            ? Words.text(
                " by %+.2f mm in %s (%+.3f mm/d)",
                creep.mm(), Wording.duration(span.lengthMs()), creep.mm() / days)
            : Words.text(" by %+.2f mm at once", creep.mm());
    String usual =
        Words.text(
            "; from night to night their difference usually changes by %.2f mm.%s",
            creep.noiseMm(), one ? "" : " Which of them it is can't be told.");
    String note = creep.creeps() ? "Creeps away from the others." : "Its zero shifts.";
    Entry proposal =
        one
            ? Proposals.bad(span, names, BadReason.WIRE_FAULT, note)
            : Proposals.remark(span, subject + how + ".");
    return new Finding(
        kind(),
        span,
        names,
        subject + how + usual,
        Math.min(1, 0.4 + 0.5 * Math.abs(creep.mm()) / SURE_MM),
        proposal,
        Optional.of(span));
  }
}
