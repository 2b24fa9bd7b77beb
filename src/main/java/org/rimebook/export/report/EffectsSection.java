package org.rimebook.export.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryWords;
import org.rimebook.season.EntryEffect;

/** Each bad interval, and each other entry that may change totals, with what it does to them. */
final class EffectsSection implements ReportSection {

  private final ReportData data;

  EffectsSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "What the entries change";
  }

  @Override
  public double roomPt() {
    return 190;
  }

  @Override
  public void write(Flow flow) {
    if (data.effects().isEmpty()) {
      flow.paragraph("No entry changes a total.");
      return;
    }
    flow.paragraph(
        "The season's total is "
            + data.words().mm(data.totals().seasonUnits())
            + " mm with all entries. For each entry: the total if it alone weren't in the"
            + " notebook, and by how much the entry raises (+) or lowers (−) it. Noise and drift as"
            + " learnt from the season with all entries are held.");
    List<EntryEffect> bad =
        sorted(data.effects().stream().filter(e -> e.entry() instanceof Entry.BadInterval));
    List<EntryEffect> others =
        sorted(data.effects().stream().filter(e -> !(e.entry() instanceof Entry.BadInterval)));
    flow.heading2("Bad intervals");
    if (bad.isEmpty()) {
      flow.paragraph("The notebook has none.");
    }
    flow.table(table(bad));
    if (!others.isEmpty()) {
      flow.heading2("Other entries");
      flow.table(table(others));
    }
  }

  private static List<EntryEffect> sorted(Stream<EntryEffect> effects) {
    return effects
        .sorted(Comparator.comparingLong(e -> e.entry().span().map(s -> s.fromMs()).orElse(0L)))
        .toList();
  }

  private Table table(List<EntryEffect> effects) {
    ReportWords words = data.words();
    Table.Builder table =
        new Table.Builder()
            .words("Entry")
            .words("When")
            .words("What")
            .figures("Without it mm")
            .figures("Effect mm")
            .words("Note");
    for (EntryEffect effect : effects) {
      Entry entry = effect.entry();
      String particulars = EntryWords.particulars(entry);
      String what = entry.kind().replace('-', ' ');
      table.row(
          ReportWords.unbroken(entry.header().id() + ", " + entry.header().by()),
          entry.span().map(words::span).orElse(""),
          entry instanceof Entry.BadInterval || particulars.isEmpty()
              ? particulars.isEmpty() ? what : particulars
              : what + ": " + particulars,
          words.mm(effect.withoutUnits()),
          words.change(effect.units()),
          entry.header().note());
    }
    return table.done();
  }
}
