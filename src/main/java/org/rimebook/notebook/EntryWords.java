package org.rimebook.notebook;

import java.util.stream.Collectors;

/** What an entry of the notebook says, in a line. */
public final class EntryWords {

  private EntryWords() {}

  /** Its id, its kind, what its members say and its note. */
  public static String of(Entry entry) {
    String note = entry.header().note();
    String particulars = particulars(entry);
    return entry.header().id()
        + " "
        + entry.kind()
        + (particulars.isEmpty() ? "" : " (" + particulars + ")")
        + (note.isEmpty() ? "" : ": " + note);
  }

  /** What its members say, for example wires and reason; empty when the kind says all. */
  public static String particulars(Entry entry) {
    if (entry instanceof Entry.BadInterval bad) {
      String wires =
          bad.wires().isEmpty()
              ? "all wires"
              : bad.wires().stream().sorted().collect(Collectors.joining("+"));
      return wires + ", " + bad.reason().code();
    }
    if (entry instanceof Entry.ServiceVisit visit) {
      return visit.actions().stream().map(VisitAction::code).collect(Collectors.joining(", "));
    }
    if (entry instanceof Entry.Estimate estimate) {
      return estimate.totalMm() + " mm from " + estimate.source();
    }
    return "";
  }
}
