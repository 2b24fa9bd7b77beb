package org.rimebook.depth;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.station.Wire;

/**
 * The depths of a season as they are used: the wires' depths with the readings left out that
 * entries of the notebook name, that lie outside the wire's physical range, or that are isolated
 * spikes. An entry covers the readings stamped in its half-open interval: a frequency is a short
 * measurement at the stamp.
 */
public final class WireDepthStage {

  /**
   * Rows beside an entry in which a reading's screening may change: what decides whether it is a
   * spike, where every other reading is missing.
   */
  public static final int REACH_ROWS = 2 * SpikeScreen.REACH;

  private final ConvertedWires converted;
  private final List<Entry> entries;

  private WireDepthStage(ConvertedWires converted, Notebook notebook) {
    this.converted = converted;
    this.entries = notebook.inForce();
  }

  /**
   * Depths of a season.
   *
   * @param converted the wires' depths
   * @param notebook its service visits and bad intervals in force are honoured
   * @param progress hears of it
   */
  public static WireDepths of(ConvertedWires converted, Notebook notebook, Progress progress) {
    WireDepthStage stage = new WireDepthStage(converted, notebook);
    int count = converted.wires().size();
    byte[][] screening =
        IntStream.range(0, count)
            .parallel()
            .mapToObj(
                wire -> {
                  progress.step("screening the readings", wire / (double) count);
                  return stage.screen(new WireScreening(converted, wire), wire);
                })
            .toArray(byte[][]::new);
    return stage.depths(screening);
  }

  /**
   * Depths of a season under another notebook, screened anew about some rows only.
   *
   * @param converted the wires' depths
   * @param before the depths as they were
   * @param notebook the other notebook
   * @param rows where it leaves out other readings, see {@link #differing}
   */
  public static WireDepths revised(
      ConvertedWires converted, WireDepths before, Notebook notebook, Optional<RowRange> rows) {
    WireDepthStage stage = new WireDepthStage(converted, notebook);
    byte[][] screening = new byte[converted.wires().size()][];
    for (int wire = 0; wire < screening.length; wire++) {
      screening[wire] = before.screening(wire);
      if (rows.isPresent()) {
        WireScreening about =
            new WireScreening(
                converted, wire, screening[wire], rows.get().fromRow(), rows.get().toRow());
        screening[wire] = stage.screen(about, wire);
      }
    }
    return stage.depths(screening);
  }

  /**
   * The rows between the first and the last in which a wire is left out by one notebook and not, or
   * not for the same kind of entry, by another; empty when there is none.
   *
   * @param converted the wires' depths
   */
  public static Optional<RowRange> differing(
      ConvertedWires converted, Notebook one, Notebook other) {
    WireDepthStage some = new WireDepthStage(converted, one);
    WireDepthStage others = new WireDepthStage(converted, other);
    BitSet differing = some.visited();
    differing.xor(others.visited());
    for (Wire wire : converted.sheet().wires()) {
      BitSet bad = some.bad(wire.name());
      bad.xor(others.bad(wire.name()));
      differing.or(bad);
    }
    return differing.isEmpty()
        ? Optional.empty()
        : Optional.of(new RowRange(differing.nextSetBit(0), differing.length()));
  }

  private BitSet visited() {
    BitSet rows = new BitSet();
    for (Entry entry : entries) {
      if (entry instanceof Entry.ServiceVisit visit) {
        set(rows, visit.interval());
      }
    }
    return rows;
  }

  private BitSet bad(String wire) {
    BitSet rows = new BitSet();
    for (Entry entry : entries) {
      if (entry instanceof Entry.BadInterval bad && covers(bad, wire)) {
        set(rows, bad.interval());
      }
    }
    return rows;
  }

  private static boolean covers(Entry.BadInterval bad, String wire) {
    return bad.wires().isEmpty() || bad.wires().contains(wire);
  }

  private void set(BitSet rows, Interval interval) {
    SeasonRecord record = converted.record();
    rows.set(
        record.firstRowAtOrAfter(interval.fromMs()), record.firstRowAtOrAfter(interval.toMs()));
  }

  private byte[] screen(WireScreening screening, int wire) {
    // Visits before bad intervals, so that the reason doesn't depend on the order of entries.
    for (Entry entry : entries) {
      if (entry instanceof Entry.ServiceVisit visit) {
        leaveOut(screening, visit.interval(), Screening.SERVICE_VISIT);
      }
    }
    String name = converted.sheet().wires().get(wire).name();
    for (Entry entry : entries) {
      if (entry instanceof Entry.BadInterval bad && covers(bad, name)) {
        leaveOut(screening, bad.interval(), Screening.BAD_INTERVAL);
      }
    }
    screening.leaveOutSpikes();
    return screening.screening();
  }

  private void leaveOut(WireScreening wire, Interval interval, Screening reason) {
    SeasonRecord record = converted.record();
    wire.leaveOut(
        record.firstRowAtOrAfter(interval.fromMs()),
        record.firstRowAtOrAfter(interval.toMs()),
        reason);
  }

  private WireDepths depths(byte[][] screening) {
    double[][] depthMm =
        converted.wires().stream().map(ConvertedWire::depthMm).toArray(double[][]::new);
    return new WireDepths(depthMm, screening, notes());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    List<String> names = converted.sheet().wires().stream().map(Wire::name).toList();
    for (Entry entry : entries) {
      if (entry instanceof Entry.BadInterval bad) {
        Set<String> unknown = new TreeSet<>(bad.wires());
        names.forEach(unknown::remove);
        for (String name : unknown) {
          notes.add(
              "bad interval "
                  + bad.header().id()
                  + " names the wire \""
                  + name
                  + "\", which the station sheet doesn't have: it leaves out nothing there");
        }
      }
    }
    return notes;
  }
}
