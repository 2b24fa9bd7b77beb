package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.rimebook.record.Column;
import org.rimebook.record.FileAccount;
import org.rimebook.record.IntSequence;
import org.rimebook.record.LineReason;
import org.rimebook.record.Provenance;
import org.rimebook.record.SamplingFinder;
import org.rimebook.record.SeasonRecord;
import org.rimebook.record.SetAside;
import org.rimebook.station.StationSheet;

/**
 * A logger that reads by a wrong clock: the record its one file gives. Rows of one time are made
 * one as when files are read: the first holds, one that disagrees with it is set aside.
 */
final class WrongClock {

  private static final String FILE = "records/readings.csv";
  private static final int FIRST_LINE = 2;

  private final SeasonRecord right;
  private final int wires;
  private final int channels;
  private final long intervalMs;
  private final List<long[]> lines = new ArrayList<>();

  /**
   * What the clock shows from an instant on.
   *
   * @param fromMs the instant [ms since epoch]
   * @param aheadMs how far the clock is ahead then [ms]
   * @param gain how fast it gains from then on [ms per ms]
   * @param phaseMs its readings come so long after whole sampling intervals [ms]
   */
  record Setting(long fromMs, long aheadMs, double gain, long phaseMs) {}

  private WrongClock(SeasonRecord right, StationSheet sheet) {
    this.right = right;
    this.wires = sheet.wires().size();
    this.channels = sheet.channels().size();
    this.intervalMs = right.sampling().get(0).intervalMs();
  }

  /**
   * The record as written by a wrong clock.
   *
   * @param right the record of a right one
   * @param sheet its station sheet
   * @param settings what the clock shows, in the order of time
   */
  static SeasonRecord record(SeasonRecord right, StationSheet sheet, List<Setting> settings) {
    WrongClock clock = new WrongClock(right, sheet);
    for (int i = 0; i < settings.size(); i++) {
      long to = i + 1 < settings.size() ? settings.get(i + 1).fromMs() : Long.MAX_VALUE;
      clock.read(settings.get(i), Math.min(to, right.stampMs(right.size() - 1) + 1));
    }
    return clock.joined();
  }

  private void read(Setting by, long toMs) {
    long first = by.fromMs() + by.aheadMs();
    long end = toMs + by.aheadMs() + Math.round(by.gain() * (toMs - by.fromMs()));
    long start = Math.floorDiv(first - by.phaseMs() + intervalMs - 1, intervalMs);
    for (long stamp = start * intervalMs + by.phaseMs(); stamp < end; stamp += intervalMs) {
      long truly = by.fromMs() + Math.round((stamp - first) / (1 + by.gain()));
      int row = right.firstRowAtOrAfter(truly);
      if (row < right.size() && right.stampMs(row) < truly + intervalMs) {
        lines.add(new long[] {stamp, row, FIRST_LINE + lines.size()});
      }
    }
  }

  private SeasonRecord joined() {
    long all = lines.size();
    List<long[]> byTime = new ArrayList<>(lines);
    byTime.sort(Comparator.comparingLong((long[] l) -> l[0]).thenComparingLong(l -> l[2]));
    List<SetAside> aside = new ArrayList<>();
    List<long[]> kept = new ArrayList<>();
    for (long[] line : byTime) {
      long[] last = kept.isEmpty() ? new long[] {Long.MIN_VALUE, 0, 0} : kept.get(kept.size() - 1);
      if (last[0] == line[0]) {
        boolean agree = agree((int) last[1], (int) line[1]);
        LineReason why = agree ? LineReason.REPEATED_ROW : LineReason.CONFLICTING_ROW;
        String detail = agree ? "" : "where " + FILE + ", line " + last[2] + " has another";
        aside.add(new SetAside(FILE, line[2], line[2], why, detail));
      } else {
        kept.add(line);
      }
    }
    aside.sort(Comparator.comparingLong(SetAside::firstLine));
    return record(kept, aside, all);
  }

  private boolean agree(int one, int other) {
    boolean agree = true;
    for (int wire = 0; agree && wire < wires; wire++) {
      agree = right.frequency(wire).get(one) == right.frequency(wire).get(other);
    }
    return agree;
  }

  private SeasonRecord record(List<long[]> kept, List<SetAside> aside, long all) {
    long[] stamps = kept.stream().mapToLong(line -> line[0]).toArray();
    int[] rows = kept.stream().mapToInt(line -> (int) line[1]).toArray();
    int[] lineOfRow = kept.stream().mapToInt(line -> (int) line[2]).toArray();
    FileAccount account =
        new FileAccount(
            FILE, all + FIRST_LINE - 1, kept.size(), aside, 0, List.of(), 0, "", List.of());
    Provenance provenance =
        new Provenance(
            List.of(account),
            IntSequence.copyOf(new int[rows.length], rows.length),
            IntSequence.copyOf(lineOfRow, rows.length),
            "");
    List<Column> frequencies = new ArrayList<>();
    for (int wire = 0; wire < wires; wire++) {
      Column column = right.frequency(wire);
      frequencies.add(column(rows, column::get));
    }
    List<Column> beside = new ArrayList<>();
    for (int channel = 0; channel < channels; channel++) {
      Column column = right.channel(channel);
      beside.add(column(rows, column::get));
    }
    return new SeasonRecord(
        stamps, frequencies, beside, SamplingFinder.find(stamps, false), provenance);
  }

  private static Column column(int[] rows, IntToDoubleFunction valueAt) {
    double[] values = Arrays.stream(rows).mapToDouble(valueAt).toArray();
    return Column.copyOf(values, values.length);
  }
}
