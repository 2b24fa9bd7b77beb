package org.rimebook.season;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/**
 * Measures how long new totals take after an entry and while an edge is dragged. Its arguments are
 * season folders; it isn't a test and fails nothing. Time of the processor tells more than that of
 * the clock where other work runs beside it.
 */
final class RevisionBench {

  private static final int WARM_UP = 30;
  private static final int TIMES = 60;
  private static final long HOUR_MS = 3_600_000;
  private static final long WEEK_MS = 168 * HOUR_MS;
  private static final Entry.Header HEADER =
      new Entry.Header("bench", "2025-01-01T00:00:00Z", "b", "");

  private final PrintWriter out =
      new PrintWriter(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);

  private RevisionBench() {}

  /** Measures each season named. */
  public static void main(String[] seasons) throws InputException {
    for (String season : seasons) {
      new RevisionBench().measure(Path.of(season));
    }
  }

  private void measure(Path folder) throws InputException {
    out.println(folder.getFileName());
    for (int i = 0; i < 3; i++) {
      stages(folder, i == 2);
    }
    Season season = Season.open(folder);
    SeasonResult full = SeasonResult.of(season);
    full.totals(Resolution.TENTH);
    String wire = season.sheet().wires().get(0).name();
    times("a week, every wire bad", full, i -> bad(season, i, WEEK_MS, Set.of()));
    times("a week, one wire bad", full, i -> bad(season, i, WEEK_MS, Set.of(wire)));
    times("a week dry", full, i -> new Entry.DrySpell(HEADER, week(season, i)));
    times("a week of late catch", full, i -> new Entry.LateCatch(HEADER, week(season, i)));
    times("two hours of visit", full, i -> visit(season, i));
    Season marked = season.with(with(season, bad(season, TIMES / 3, WEEK_MS, Set.of(wire))));
    SeasonResult entered = full.anew(marked, Progress.NONE);
    entered.totals(Resolution.TENTH);
    times(
        "the edge of a week's entry, dragged",
        entered,
        i -> bad(season, TIMES / 3, WEEK_MS + (i - TIMES / 2) * HOUR_MS / 10, Set.of(wire)));
    times(
        "the edge of a new mark, dragged to a week",
        full,
        i -> bad(season, TIMES / 3, WEEK_MS * (i + 1) / TIMES, Set.of(wire)));
  }

  private void stages(Path folder, boolean print) throws InputException {
    long[] at = new long[5];
    at[0] = System.nanoTime();
    Season season = Season.open(folder);
    at[1] = System.nanoTime();
    SeasonDepths depths = SeasonDepths.of(season, Progress.NONE);
    at[2] = System.nanoTime();
    SeasonResult result = SeasonResult.of(depths, Progress.NONE);
    at[3] = System.nanoTime();
    result.totals(Resolution.TENTH);
    at[4] = System.nanoTime();
    if (print) {
      out.printf(
          Locale.ROOT,
          "  opening: record %.0f, depths %.0f, level and estimate %.0f, totals %.0f ms%n",
          ms(at[1] - at[0]),
          ms(at[2] - at[1]),
          ms(at[3] - at[2]),
          ms(at[4] - at[3]));
    }
  }

  private static double ms(long nanoseconds) {
    return nanoseconds / 1e6;
  }

  /** An entry for each time it is asked for. */
  private interface Entries {
    Entry at(int time);
  }

  private void times(String what, SeasonResult result, Entries entries) {
    double[] ms = new double[TIMES];
    double[] cpuMs = new double[TIMES];
    ThreadMXBean thread = ManagementFactory.getThreadMXBean();
    for (int i = 0; i < WARM_UP + TIMES; i++) {
      int time = i % TIMES;
      long start = System.nanoTime();
      long cpuStart = thread.getCurrentThreadCpuTime();
      SeasonResult revised = result.revised(with(result.season(), entries.at(time)));
      revised.totals(Resolution.TENTH);
      if (i >= WARM_UP) {
        ms[i - WARM_UP] = ms(System.nanoTime() - start);
        cpuMs[i - WARM_UP] = ms(thread.getCurrentThreadCpuTime() - cpuStart);
      }
    }
    Arrays.sort(ms);
    Arrays.sort(cpuMs);
    out.printf(
        Locale.ROOT,
        "  %-42s median %5.1f, p95 %5.1f ms; of the processor %5.1f, %5.1f ms%n",
        what,
        ms[TIMES / 2],
        ms[TIMES * 95 / 100],
        cpuMs[TIMES / 2],
        cpuMs[TIMES * 95 / 100]);
  }

  /** The notebook of a season with another entry, in the place of an earlier one of the bench. */
  private static Notebook with(Season season, Entry entry) {
    List<Entry> history = new ArrayList<>(season.notebook().history());
    history.removeIf(earlier -> earlier.header().id().equals(HEADER.id()));
    history.add(entry);
    return new Notebook(history, List.of());
  }

  private static Entry bad(Season season, int time, long lengthMs, Set<String> wires) {
    long from = week(season, time).fromMs();
    return new Entry.BadInterval(
        HEADER, new Interval(from, from + lengthMs), wires, BadReason.OTHER);
  }

  private static Entry visit(Season season, int time) {
    long from = week(season, time).fromMs();
    return new Entry.ServiceVisit(
        HEADER,
        new Interval(from, from + 2 * HOUR_MS),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  /** A week at one of as many places of the season as there are times. */
  private static Interval week(Season season, int time) {
    long first = season.record().stampMs(0);
    long last = season.record().stampMs(season.record().size() - 1) - 2 * WEEK_MS;
    long from = first + (last - first) / TIMES * time;
    return new Interval(from, from + WEEK_MS);
  }
}
