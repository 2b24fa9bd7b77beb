package org.rimebook.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
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

  SeasonRecord build(int[] order, RecordDigest digest) {
    long[] stampsMs = rows.stampsMs();
    int[] lines = rows.lines();
    int[] files = files();
    if (!asRead(order)) {
      stampsMs = Arrays.stream(order).mapToLong(rows::stampMs).toArray();
      lines = Arrays.stream(order).map(rows::line).toArray();
      files = Arrays.stream(order).map(row -> Joiner.fileOf(readings, row)).toArray();
    }
    CompletableFuture<List<FileAccount>> accounts =
        CompletableFuture.supplyAsync(() -> accounts(order));
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
        new Provenance(accounts.join(), IntSequence.over(files), IntSequence.over(lines), digest);
    return new SeasonRecord(stampsMs, frequencies, channels, sampling, provenance);
  }

  /** Whether the record is of all rows, in the order they were read in. */
  private boolean asRead(int[] order) {
    return rows.inOrder() && order.length == rows.size();
  }

  /** The file of each row. */
  private int[] files() {
    int[] files = new int[rows.size()];
    for (int file = 0; file < readings.size(); file++) {
      Arrays.fill(files, readings.get(file).firstRow(), readings.get(file).endRow(), file);
    }
    return files;
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
    if (inside && asRead(order)) {
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
    BitSet used = new BitSet(rows.size());
    if (asRead(order)) {
      used.set(0, rows.size());
    } else {
      Arrays.stream(order).forEach(used::set);
    }
    return readings.stream().map(file -> account(file, used)).toList();
  }

  private FileAccount account(FileReading file, BitSet rowsUsed) {
    BitSet ofFile = rowsUsed.get(file.firstRow(), file.endRow());
    long used = ofFile.cardinality();
    long missing = 0;
    for (int row = file.firstRow(); row < file.endRow(); row++) {
      missing += rowsUsed.get(row) ? rows.missingFields(row) : 0;
    }
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
