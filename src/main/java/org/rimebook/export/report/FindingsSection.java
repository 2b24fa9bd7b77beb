package org.rimebook.export.report;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.List;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Decided;

/** What looks wrong: what is still to be decided, and what the notebook has decided. */
final class FindingsSection implements ReportSection {

  private final ReportData data;

  FindingsSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Findings";
  }

  @Override
  public void write(Flow flow) {
    open(flow);
    accepted(flow);
    dismissed(flow);
  }

  private void open(Flow flow) {
    List<Finding> open = data.result().findings().open();
    flow.heading2("To be decided");
    flow.paragraph(
        open.isEmpty()
            ? "Nothing is left to decide."
            : counted(open.size(), "finding")
                + ". Totals a finding puts in doubt are suspect until somebody decides.");
    Table.Builder table =
        new Table.Builder()
            .words("When")
            .words("What")
            .figures("Strength")
            .words("Doubts totals")
            .words("Why");
    for (Finding finding : open) {
      table.row(
          data.words().span(finding.span()),
          what(finding),
          text("%.2f", finding.strength()),
          finding.doubted().isPresent() ? "yes" : "no",
          finding.reason());
    }
    flow.table(table.done());
  }

  private static String what(Finding finding) {
    return finding.kind().words()
        + (finding.wires().isEmpty() ? "" : " (" + String.join(", ", finding.wires()) + ")");
  }

  private void accepted(Flow flow) {
    List<Decided> accepted =
        data.decided().stream().filter(d -> !(d.by() instanceof Entry.Dismissal)).toList();
    flow.heading2("Accepted");
    flow.paragraph(
        accepted.isEmpty()
            ? "No entry answers to what the checks find in the record alone."
            : "What the checks find in the record alone, as if the notebook were empty, and the"
                + " entry of the kind proposed that covers it.");
    Table.Builder table =
        new Table.Builder().words("When").words("What").words("Entry").words("Why");
    for (Decided decided : accepted) {
      table.row(
          data.words().span(decided.finding().span()),
          what(decided.finding()),
          decided.by().header().id() + " " + decided.by().kind().replace('-', ' '),
          decided.finding().reason());
    }
    flow.table(table.done());
  }

  private void dismissed(Flow flow) {
    List<Entry.Dismissal> dismissals =
        data.season().notebook().inForce().stream()
            .filter(entry -> entry instanceof Entry.Dismissal)
            .map(entry -> (Entry.Dismissal) entry)
            .toList();
    flow.heading2("Dismissed");
    if (dismissals.isEmpty()) {
      flow.paragraph("None.");
      return;
    }
    Table.Builder table =
        new Table.Builder()
            .words("Entry")
            .words("Finding")
            .words("What was found")
            .words("Reason given");
    for (Entry.Dismissal dismissal : dismissals) {
      table.row(
          ReportWords.unbroken(dismissal.header().id() + ", " + dismissal.header().by()),
          dismissal.finding(),
          found(dismissal),
          dismissal.header().note());
    }
    flow.table(table.done());
  }

  /** What the checks say of it in the record alone; empty when they find something else there. */
  private String found(Entry.Dismissal dismissal) {
    return data.decided().stream()
        .filter(decided -> decided.by().equals(dismissal))
        .map(decided -> decided.finding().reason())
        .findFirst()
        .orElse("");
  }
}
