package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.record.FileAccount;
import org.rimebook.record.LineReason;
import org.rimebook.record.Provenance;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.record.SetAside;
import org.rimebook.station.Interval;

/**
 * Where a logger's clock was set, as far as its files still show it. A clock set back makes stamps
 * twice: rows of one file then lie between each other in time, or were set aside as conflicts. A
 * clock set forward leaves a hole like any silence of the logger. Blocks of a file in the wrong
 * order are no sign of a clock, nor are rows written twice that agree.
 */
final class ClockSteps {

  /** Share of the doubled time that rows of both passes have to lie in; own choice. */
  private static final double BOTH = 0.6;

  /** Of rows set aside between two that follow each other, so many disagree; own choice. */
  private static final double DISAGREEING = 0.2;

  private static final int FEWEST_CONFLICTS = 2;

  private final SeasonRecord record;
  private final List<Step> steps = new ArrayList<>();
  private final Once<int[]> byLine = new Once<>(this::allByLine);

  /**
   * A place where the clock was set, or may have been.
   *
   * @param atMs stamp of the last reading before [ms since epoch]
   * @param byMs how far it was set: forward when positive [ms]
   * @param resumedMs stamp of the first reading after that the record has [ms since epoch]
   */
  record Step(long atMs, long byMs, long resumedMs) {

    boolean back() {
      return byMs < 0;
    }
  }

  private ClockSteps(SeasonRecord record) {
    this.record = record;
  }

  /** Where clocks were set back, in the order of time. */
  static List<Step> back(SeasonRecord record) {
    ClockSteps all = new ClockSteps(record);
    boolean[] maybe = all.maybeSetBack();
    for (int file = 0; file < maybe.length; file++) {
      if (maybe[file]) {
        all.look(file);
      }
    }
    all.steps.sort(Comparator.comparingLong(Step::atMs));
    return all.steps;
  }

  /** Holes of at least so many sampling intervals and so long, in the order of time. */
  static List<Step> holes(SeasonRecord record, int leastIntervals, long leastMs) {
    List<Step> holes = new ArrayList<>();
    Steps.longer(
        record,
        leastIntervals + 1,
        leastMs,
        (row, usualMs) -> {
          long before = record.stampMs(row - 1);
          long after = record.stampMs(row);
          holes.add(new Step(before, after - before - usualMs, after));
        });
    return holes;
  }

  /** Whether a clock that was found wrong was set across a hole, which is none then. */
  static boolean named(Scene scene, long beforeMs, long afterMs) {
    boolean drifts =
        scene.found().stream().anyMatch(finding -> finding.kind() == FindingKind.CLOCK_DRIFT);
    return drifts
            && ClockDriftCheck.in(scene).stream()
                .flatMap(drift -> drift.steps().stream())
                .anyMatch(step -> step.atMs() == beforeMs && step.resumedMs() == afterMs)
        || scene.found().stream()
            .filter(
                finding ->
                    finding.kind() == FindingKind.CLOCK_JUMP
                        || finding.kind() == FindingKind.CLOCK_OFFSET)
            .anyMatch(
                finding ->
                    finding.span().toMs() == beforeMs
                        || finding.span().fromMs() == afterMs
                        || finding.span().equals(new Interval(beforeMs, afterMs)));
  }

  /** Files with rows before others that stand above them, or with conflicts. */
  private boolean[] maybeSetBack() {
    Provenance from = record.provenance();
    boolean[] maybe = new boolean[from.files().size()];
    for (int file = 0; file < maybe.length; file++) {
      maybe[file] =
          from.files().get(file).setAside().stream()
              .anyMatch(lines -> lines.reason() == LineReason.CONFLICTING_ROW);
    }
    int[] last = new int[maybe.length];
    for (int row = 0; row < record.size() && maybe.length > 0; row++) {
      int file = from.fileOfRow().get(row);
      int line = from.lineOfRow().get(row);
      maybe[file] |= line < last[file];
      last[file] = line;
    }
    return maybe;
  }

  private void look(int file) {
    int[] rows = rowsByLine(file);
    Provenance from = record.provenance();
    Lines lines = new Lines(from.files().get(file));
    Above above = new Above();
    for (int i = 1; i < rows.length; i++) {
      int before = from.lineOfRow().get(rows[i - 1]);
      int after = from.lineOfRow().get(rows[i]);
      long stepMs = record.stampMs(rows[i]) - record.stampMs(rows[i - 1]);
      if (stepMs < 0 || after - before > FEWEST_CONFLICTS) {
        long again = lines.doubled(before + 1, after - 1);
        long intervalMs = intervalMs(rows[i - 1]);
        long by = stepMs - (again + 1) * intervalMs;
        boolean goesOn = stepMs >= 0 && stepMs <= 3 * intervalMs && again >= FEWEST_CONFLICTS;
        if (goesOn || stepMs < 0 && interleaved(rows[i], rows[i - 1], above.line(after))) {
          steps.add(new Step(record.stampMs(rows[i - 1]), by, record.stampMs(rows[i])));
        }
      }
    }
  }

  /** Rows of a file in the order of its lines. */
  private int[] rowsByLine(int file) {
    Provenance from = record.provenance();
    int last = 0;
    for (int row = 0; row < record.size(); row++) {
      last = from.fileOfRow().get(row) == file ? Math.max(last, from.lineOfRow().get(row)) : last;
    }
    int[] rowOfLine = new int[last + 1];
    Arrays.fill(rowOfLine, -1);
    for (int row = 0; row < record.size(); row++) {
      if (from.fileOfRow().get(row) == file) {
        rowOfLine[from.lineOfRow().get(row)] = row;
      }
    }
    return Arrays.stream(rowOfLine).filter(row -> row >= 0).toArray();
  }

  /** Whether rows from before a step back and rows from after it fill the same time. */
  private boolean interleaved(int first, int last, BitSet above) {
    int earlier = above.get(first, last + 1).cardinality();
    int later = last + 1 - first - earlier;
    double expected = (record.stampMs(last) - record.stampMs(first)) / (double) intervalMs(first);
    double enough = Math.max(1, BOTH * expected);
    return earlier >= enough && later >= enough;
  }

  /** Rows of all files in the order of their lines. */
  private int[] allByLine() {
    Provenance from = record.provenance();
    return IntStream.range(0, record.size())
        .mapToLong(row -> (long) from.lineOfRow().get(row) << 32 | row)
        .sorted()
        .mapToInt(lineAndRow -> (int) lineAndRow)
        .toArray();
  }

  /**
   * Rows that stand above a line, for lines further and further down: in a record whose rows are in
   * no order every other row is a step back, each across much of the record.
   */
  private final class Above {

    private final BitSet rows = new BitSet(record.size());
    private int taken;

    BitSet line(int line) {
      int[] all = byLine.get();
      while (taken < all.length && record.provenance().lineOfRow().get(all[taken]) < line) {
        rows.set(all[taken]);
        taken++;
      }
      return rows;
    }
  }

  private long intervalMs(int row) {
    return record.sampling().stream()
        .filter(run -> row <= run.lastRow())
        .mapToLong(SamplingRun::intervalMs)
        .findFirst()
        .orElse(1);
  }

  /** Lines of a file that were set aside. */
  private record Lines(List<SetAside> setAside) {

    Lines(FileAccount account) {
      this(
          account.setAside().stream()
              .filter(
                  lines ->
                      lines.reason() == LineReason.CONFLICTING_ROW
                          || lines.reason() == LineReason.REPEATED_ROW)
              .toList());
    }

    /** Rows between two lines that have the time of others; 0 when nearly all agree with them. */
    long doubled(long firstLine, long lastLine) {
      long all = 0;
      long conflicts = 0;
      for (SetAside lines : setAside) {
        if (lines.firstLine() >= firstLine && lines.lastLine() <= lastLine) {
          all += lines.lines();
          conflicts += lines.reason() == LineReason.CONFLICTING_ROW ? lines.lines() : 0;
        }
      }
      return conflicts >= DISAGREEING * all ? all : 0;
    }
  }
}
