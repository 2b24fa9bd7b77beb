package org.rimebook.export.report;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.rimebook.depth.LevelSeries;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/** Each service visit with the level before and after it. */
final class VisitsSection implements ReportSection {

  private static final int READINGS = 5;
  private static final long BESIDE_MS = 3 * 3_600_000L;

  private final ReportData data;

  VisitsSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Service visits";
  }

  @Override
  public void write(Flow flow) {
    List<Entry.ServiceVisit> visits =
        data.season().notebook().inForce().stream()
            .filter(entry -> entry instanceof Entry.ServiceVisit)
            .map(entry -> (Entry.ServiceVisit) entry)
            .sorted((a, b) -> Long.compare(a.interval().fromMs(), b.interval().fromMs()))
            .toList();
    if (visits.isEmpty()) {
      flow.paragraph("The notebook has none.");
      return;
    }
    flow.paragraph(
        "Level of the bucket: the median of up to five readings within three hours before and"
            + " after. No change across a visit is catch.");
    Table.Builder table =
        new Table.Builder()
            .words("Visit")
            .words("Done")
            .figures("Antifreeze L")
            .figures("Oil L")
            .figures("Before mm")
            .figures("After mm")
            .figures("Change mm")
            .words("Note");
    visits.forEach(visit -> add(table, visit));
    flow.table(table.done());
  }

  private void add(Table.Builder table, Entry.ServiceVisit visit) {
    ReportWords words = data.words();
    Interval at = visit.interval();
    OptionalDouble before = levelMm(new Interval(at.fromMs() - BESIDE_MS, at.fromMs()), false);
    OptionalDouble after = levelMm(new Interval(at.toMs(), at.toMs() + BESIDE_MS), true);
    OptionalDouble change =
        before.isPresent() && after.isPresent()
            ? OptionalDouble.of(after.getAsDouble() - before.getAsDouble())
            : OptionalDouble.empty();
    table.row(
        words.span(at),
        visit.actions().stream()
            .map(VisitAction::code)
            .map(code -> code.replace('-', ' '))
            .collect(Collectors.joining(", ")),
        words.mm(visit.antifreezeL(), 2),
        words.mm(visit.oilL(), 2),
        words.mm(before, 1),
        words.mm(after, 1),
        words.mm(change, 1),
        visit.header().note());
  }

  /** The median level of the readings nearest to one end of a span; empty when it has none. */
  private OptionalDouble levelMm(Interval beside, boolean atStart) {
    SeasonRecord record = data.season().record();
    LevelSeries level = data.result().level();
    int from = level.indexAtOrAfter(record.firstRowAtOrAfter(beside.fromMs()));
    int to = level.indexAtOrAfter(record.firstRowAtOrAfter(beside.toMs()));
    int first = atStart ? from : Math.max(from, to - READINGS);
    int end = atStart ? Math.min(to, from + READINGS) : to;
    if (first >= end) {
      return OptionalDouble.empty();
    }
    double[] near = new double[end - first];
    for (int i = first; i < end; i++) {
      near[i - first] = level.levelMm(i);
    }
    Arrays.sort(near);
    return OptionalDouble.of(0.5 * (near[(near.length - 1) / 2] + near[near.length / 2]));
  }
}
