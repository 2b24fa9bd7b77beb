package org.rimebook.command;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.depth.Screening;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.record.FileAccount;
import org.rimebook.record.LineReason;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.record.SetAside;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.season.SignOffState;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/** What is in a season, as lines for a terminal. */
final class Inspection {

  private static final double HOUR_MS = 3_600_000.0;
  private static final int LONGEST_GAPS = 5;
  private static final int MOST_VISITS = 8;
  private static final int MOST_RUNS = 5;

  private final SeasonResult result;
  private final Season season;
  private final SeasonRecord record;
  private final LabelledLines lines;

  Inspection(SeasonResult result) {
    this.result = result;
    this.season = result.season();
    this.record = season.record();
    this.lines = new LabelledLines(season.sheet().utcOffset());
  }

  List<String> lines() {
    lines.title(season.sheet().name());
    line("record", span(record.stampMs(0), record.stampMs(record.size() - 1)));
    line("", counted(record.size(), "reading") + " in " + counted(files().size(), "file"));
    addSampling();
    addCoverage();
    addWires();
    addGaps();
    addEntries();
    addLines();
    addNotes();
    return lines.lines();
  }

  private List<FileAccount> files() {
    return record.provenance().files();
  }

  private void line(String label, String words) {
    lines.add(label, words);
  }

  private String span(long fromMs, long toMs) {
    return lines.span(fromMs, toMs);
  }

  private void addSampling() {
    String label = "sampling";
    int shown = 0;
    for (SamplingRun run : record.sampling()) {
      if (shown++ == MOST_RUNS) {
        line("", text("and %d more changes", record.sampling().size() - MOST_RUNS));
        break;
      }
      line(
          label,
          text("%-7s ", seconds(run.intervalMs()))
              + span(record.stampMs(run.firstRow()), record.stampMs(run.lastRow())));
      label = "";
    }
  }

  private static String seconds(long ms) {
    return ms % 1000 == 0 ? ms / 1000 + " s" : text("%.3f s", ms / 1000.0);
  }

  private void addCoverage() {
    long usable = 0;
    int run = 0;
    for (int i = 0; i < result.level().size(); i++) {
      while (record.sampling().get(run).lastRow() < result.level().row(i)) {
        run++;
      }
      usable += record.sampling().get(run).intervalMs();
    }
    double span = record.stampMs(record.size() - 1) - record.stampMs(0);
    double percent = span == 0 ? 0 : Math.min(100, 100 * usable / span);
    line("coverage", text("%.2f %% of the time has a usable reading", percent));
  }

  private void addWires() {
    String label = "wires";
    for (int wire = 0; wire < season.sheet().wires().size(); wire++) {
      line(label, wire(wire));
      label = "";
    }
  }

  private String wire(int index) {
    Wire wire = season.sheet().wires().get(index);
    int[] count = new int[Screening.values().length];
    double first = Double.NaN;
    double last = Double.NaN;
    for (int row = 0; row < record.size(); row++) {
      count[result.depths().screening(index, row).ordinal()]++;
      if (result.depths().used(index, row)) {
        last = result.depths().depthMm(index, row);
        first = Double.isNaN(first) ? last : first;
      }
    }
    String left =
        Stream.of(Screening.values())
            .filter(s -> s != Screening.USED && count[s.ordinal()] > 0)
            .map(s -> count[s.ordinal()] + " " + s.code())
            .collect(Collectors.joining(", "));
    double used = 100.0 * count[Screening.USED.ordinal()] / record.size();
    return text("%-12s %-10s used %6.2f %%", wire.name(), wire.frequencyColumn(), used)
        + (Double.isNaN(first) ? "" : text("  %.1f to %.1f mm", first, last))
        + (left.isEmpty() ? "" : "  left out: " + left);
  }

  private void addGaps() {
    CatchSeries series = result.series();
    List<Integer> gaps = new ArrayList<>();
    double hours = 0;
    for (int piece = 0; piece < series.size(); piece++) {
      CatchSeries.Kind kind = series.kind(piece);
      if (kind == CatchSeries.Kind.GAP_CATCH
          || kind == CatchSeries.Kind.GAP_STILL
          || kind == CatchSeries.Kind.UNKNOWN) {
        gaps.add(piece);
        hours += (series.toMs(piece) - series.fromMs(piece)) / HOUR_MS;
      }
    }
    if (gaps.isEmpty()) {
      line("gaps", "none");
      return;
    }
    line("gaps", text("%d, %.1f h together; the longest:", gaps.size(), hours));
    gaps.sort(
        (a, b) ->
            Long.compare(series.toMs(b) - series.fromMs(b), series.toMs(a) - series.fromMs(a)));
    gaps.stream().limit(LONGEST_GAPS).sorted().forEach(piece -> line("", gap(piece)));
  }

  private String gap(int piece) {
    CatchSeries series = result.series();
    String caught =
        switch (series.kind(piece)) {
          case GAP_CATCH -> text("caught %.2f mm, timing unknown", series.catchMm(piece));
          case GAP_STILL -> "level unchanged";
          default -> "catch unknown";
        };
    double hours = (series.toMs(piece) - series.fromMs(piece)) / HOUR_MS;
    return span(series.fromMs(piece), series.toMs(piece)) + text("  %6.1f h  ", hours) + caught;
  }

  private void addEntries() {
    List<Entry> inForce = season.notebook().inForce();
    List<Entry.ServiceVisit> visits =
        inForce.stream()
            .filter(e -> e instanceof Entry.ServiceVisit)
            .map(e -> (Entry.ServiceVisit) e)
            .toList();
    line("visits", visits.isEmpty() ? "none" : visits.size() + "");
    for (Entry.ServiceVisit visit : visits.subList(0, Math.min(MOST_VISITS, visits.size()))) {
      Interval at = visit.interval();
      String actions =
          visit.actions().stream().map(VisitAction::code).collect(Collectors.joining(", "));
      line("", span(at.fromMs(), at.toMs()) + "  " + actions);
    }
    Map<String, Long> byKind =
        inForce.stream()
            .collect(Collectors.groupingBy(Entry::kind, TreeMap::new, Collectors.counting()));
    String kinds =
        byKind.entrySet().stream()
            .map(e -> e.getValue() + " " + e.getKey())
            .collect(Collectors.joining(", "));
    int written = season.notebook().history().size();
    line(
        "entries",
        kinds.isEmpty()
            ? "none"
            : kinds + text("  (%d written, sign-off %s)", written, SignOffState.of(season).code()));
  }

  private void addLines() {
    long total = files().stream().mapToLong(FileAccount::lines).sum();
    long used = files().stream().mapToLong(FileAccount::used).sum();
    line("lines", text("%d = %d used + %d not taken", total, used, total - used));
    Map<LineReason, Long> count = new EnumMap<>(LineReason.class);
    Map<LineReason, SetAside> first = new EnumMap<>(LineReason.class);
    for (FileAccount file : files()) {
      for (SetAside run : file.setAside()) {
        count.merge(run.reason(), run.lines(), Long::sum);
        first.putIfAbsent(run.reason(), run);
      }
    }
    count.forEach(
        (reason, lineCount) -> {
          SetAside at = first.get(reason);
          String detail = at.detail().isEmpty() ? "" : ": " + at.detail();
          line(
              "",
              text(
                  "%7d  %s (first %s, line %d%s)",
                  lineCount, reason.words(), at.file(), at.firstLine(), detail));
        });
    long unreadable = files().stream().mapToLong(FileAccount::unreadableCount).sum();
    if (unreadable > 0) {
      line("", text("%7d  fields that aren't numbers, taken as missing", unreadable));
    }
  }

  private void addNotes() {
    result.calibrations().alerts().forEach(alert -> line("alert", alert));
    result.notes().forEach(note -> line("note", note));
  }
}
