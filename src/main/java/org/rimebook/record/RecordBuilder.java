package org.rimebook.record;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.station.Channel;
import org.rimebook.station.Problem;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;
import org.rimebook.station.Wire;

/** Makes the record of the joined rows, with the account of every file. */
final class RecordBuilder {

  private static final int MOST_NOTES = 1000;

  private final StationSheet sheet;
  private final Wanted wanted;
  private final Rows rows;
  private final List<FileReading> readings;

  RecordBuilder(StationSheet sheet, Wanted wanted, Rows rows, List<FileReading> readings) {
    this.sheet = sheet;
    this.wanted = wanted;
    this.rows = rows;
    this.readings = readings;
  }

  SeasonRecord build(int[] order, String sha256) {
    long[] stampsMs = new long[order.length];
    int[] files = new int[order.length];
    int[] lines = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      stampsMs[i] = rows.stampMs(order[i]);
      files[i] = Joiner.fileOf(readings, order[i]);
      lines[i] = rows.line(order[i]);
    }
    boolean startStamps = sheet.layout().timeIs() == RecordLayout.TimeIs.START;
    List<SamplingRun> sampling = SamplingFinder.find(stampsMs, startStamps);
    if (startStamps) {
      toEnds(stampsMs, sampling);
    }
    List<Column> frequencies = new ArrayList<>();
    for (Wire wire : sheet.wires()) {
      frequencies.add(column(order, wire.frequencyColumn(), Optional.empty()));
    }
    List<Column> channels = new ArrayList<>();
    for (Channel channel : sheet.channels()) {
      channels.add(column(order, channel.column(), Optional.of(channel.unit())));
    }
    Provenance provenance =
        new Provenance(accounts(order), IntSequence.over(files), IntSequence.over(lines), sha256);
    return new SeasonRecord(stampsMs, frequencies, channels, sampling, provenance);
  }

  /** Moves stamps to the ends of their intervals, none beyond the start of the next. */
  private static void toEnds(long[] stampsMs, List<SamplingRun> sampling) {
    for (SamplingRun run : sampling) {
      for (int row = run.firstRow(); row <= run.lastRow(); row++) {
        long end = stampsMs[row] + run.intervalMs();
        boolean last = row == stampsMs.length - 1;
        stampsMs[row] = last ? end : Math.min(end, stampsMs[row + 1]);
      }
    }
  }

  /** A column in time order; the rows' own where they are in order and in the unit inside. */
  private Column column(int[] order, String name, Optional<Unit> unit) {
    int source = wanted.values().indexOf(name);
    boolean inside = unit.isEmpty() || unit.get().symbol().equals(unit.get().insideSymbol());
    if (inside && order.length == rows.size() && rows.inOrder()) {
      return rows.column(source);
    }
    double[] values = new double[order.length];
    for (int i = 0; i < order.length; i++) {
      double logged = rows.value(source, order[i]);
      values[i] = inside ? logged : unit.get().toInside(logged);
    }
    return Column.over(values, values.length);
  }

  private List<FileAccount> accounts(int[] order) {
    long[] missing = new long[readings.size()];
    long[] used = new long[readings.size()];
    BitSet rowsUsed = new BitSet();
    int file = 0;
    for (int row : order) {
      if (row < readings.get(file).firstRow() || row >= readings.get(file).endRow()) {
        file = Joiner.fileOf(readings, row);
      }
      missing[file] += rows.missingFields(row);
      used[file]++;
      rowsUsed.set(row);
    }
    List<FileAccount> accounts = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      accounts.add(account(readings.get(i), rowsUsed, used[i], missing[i]));
    }
    return accounts;
  }

  private FileAccount account(FileReading file, BitSet rowsUsed, long used, long missing) {
    BitSet lines = new BitSet();
    if (!file.joinedLines().isEmpty() || !file.unreadable().isEmpty()) {
      int row = rowsUsed.nextSetBit(file.firstRow());
      while (row >= 0 && row < file.endRow()) {
        lines.set(rows.line(row));
        row = rowsUsed.nextSetBit(row + 1);
      }
    }
    long joinedLines =
        file.joinedLines().entrySet().stream()
            .filter(entry -> lines.get(entry.getKey().intValue()))
            .mapToLong(Map.Entry::getValue)
            .sum();
    List<FileAccount.FieldNote> unreadable =
        file.unreadable().stream().filter(note -> lines.get((int) note.line())).toList();
    List<SetAside> setAside = file.ledger().inOrder();
    List<Problem> notes = new ArrayList<>(file.notes());
    notes.addAll(FileNotes.ofLines(file.file(), setAside));
    notes.addAll(FileNotes.ofFields(file.file(), unreadable, used));
    return new FileAccount(
        file.file(),
        file.lines(),
        used + joinedLines,
        setAside,
        missing,
        unreadable.subList(0, Math.min(MOST_NOTES, unreadable.size())),
        unreadable.size(),
        file.dialect(),
        notes);
  }
}
