package org.rimebook.export.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryWords;

/** Every entry of the notebook in the order written, withdrawn ones too, and the sign-off. */
final class NotebookSection implements ReportSection {

  private final ReportData data;

  NotebookSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Notebook and sign-off";
  }

  @Override
  public void write(Flow flow) {
    flow.paragraph(SignOffLine.of(data));
    List<Entry> history = data.season().notebook().history();
    if (history.isEmpty()) {
      flow.paragraph("Nobody has written in the notebook.");
      return;
    }
    Set<String> counting = new HashSet<>();
    data.season().notebook().inForce().forEach(entry -> counting.add(entry.header().id()));
    Table.Builder table =
        new Table.Builder()
            .words("Entry")
            .words("Written")
            .words("By")
            .words("Kind")
            .words("When")
            .words("Says")
            .words("Counts");
    for (Entry entry : history) {
      Entry.Header header = entry.header();
      boolean counts = counting.contains(header.id()) || entry instanceof Entry.Withdrawal;
      table.row(
          header.id(),
          header.at().replace('T', ' '),
          header.by(),
          entry.kind().replace('-', ' '),
          entry.span().map(data.words()::span).orElse(""),
          says(entry),
          counts ? "yes" : "withdrawn");
    }
    flow.table(table.done());
  }

  private static String says(Entry entry) {
    String particulars =
        entry instanceof Entry.Withdrawal withdrawal
            ? "withdraws " + withdrawal.entry()
            : entry instanceof Entry.Dismissal dismissal
                ? "dismisses " + dismissal.finding()
                : EntryWords.particulars(entry);
    String note = entry.header().note();
    return particulars.isEmpty() || note.isEmpty() ? particulars + note : particulars + ": " + note;
  }
}
