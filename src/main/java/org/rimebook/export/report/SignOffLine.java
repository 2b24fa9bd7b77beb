package org.rimebook.export.report;

import java.util.List;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SignOffState;

/** Whether somebody has signed for the totals, in a sentence. */
final class SignOffLine {

  private SignOffLine() {}

  static String of(ReportData data) {
    List<Entry> signed =
        data.season().notebook().inForce().stream()
            .filter(entry -> entry instanceof Entry.SignOff)
            .toList();
    if (signed.isEmpty()) {
      return "Not signed off.";
    }
    Entry.Header last = signed.get(signed.size() - 1).header();
    String who = "Signed off by " + last.by() + " at " + last.at();
    return SignOffState.of(data.season()) == SignOffState.CURRENT
        ? who + "; record, station sheet and entries are as they were then."
        : who + "; stale: record, station sheet or entries have changed since.";
  }
}
