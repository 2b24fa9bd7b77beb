package org.rimebook.findings;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;

/** Entries for findings to propose: without id, time and initials, which come with acceptance. */
final class Proposals {

  private Proposals() {}

  private static Entry.Header header(String note) {
    return new Entry.Header("", "", "", note);
  }

  static Entry visit(Interval span, List<VisitAction> actions, String note) {
    return new Entry.ServiceVisit(
        header(note), span, actions, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** All wires when none is named. */
  static Entry bad(Interval span, Collection<String> wires, BadReason reason, String note) {
    return new Entry.BadInterval(header(note), span, Set.copyOf(wires), reason);
  }

  static Entry late(Interval span, String note) {
    return new Entry.LateCatch(header(note), span);
  }

  static Entry dry(Interval span, String note) {
    return new Entry.DrySpell(header(note), span);
  }

  static Entry estimate(Interval span, double totalMm, String source, String note) {
    return new Entry.Estimate(header(note), span, totalMm, source);
  }

  static Entry remark(Interval span, String note) {
    return new Entry.Remark(header(note), Optional.of(span));
  }
}
