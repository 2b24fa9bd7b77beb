package org.rimebook.depth;

import java.util.Arrays;
import java.util.List;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;

/**
 * The rows the level is known at, cut into segments. Within a segment every two neighbouring rows
 * share a wire in use on one calibration, so that an increment between them is known.
 */
final class UsableRows {

  /**
   * Rows looked through for one that goes on from the last, before the segment is cut; own choice.
   */
  private static final int STRAY_ROWS = 20;

  private final SeasonRecord record;
  private final WireDepths depths;
  private final List<ConvertedWire> wires;
  private final Sampling sampling;
  private int[] visitEnds = {};
  private int[] row;
  private int[] wireMask;
  private int[] segment;
  private int size;
  private final int endRow;

  private UsableRows(ConvertedWires converted, WireDepths depths, RowRange range) {
    this.record = converted.record();
    this.depths = depths;
    this.wires = converted.wires();
    this.sampling = converted.sampling();
    this.endRow = range.toRow();
    this.row = new int[endRow - range.fromRow()];
    this.wireMask = new int[row.length];
    this.segment = new int[row.length];
  }

  /** The usable ones among some rows of a record. */
  static UsableRows of(
      ConvertedWires converted, WireDepths depths, Notebook notebook, RowRange range) {
    UsableRows rows = new UsableRows(converted, depths, range);
    SeasonRecord record = converted.record();
    rows.visitEnds =
        notebook.inForce().stream()
            .filter(Entry.ServiceVisit.class::isInstance)
            .map(Entry.ServiceVisit.class::cast)
            .mapToInt(visit -> record.firstRowAtOrAfter(visit.interval().toMs()))
            .sorted()
            .toArray();
    rows.cut(range.fromRow());
    return rows;
  }

  private void cut(int fromRow) {
    int number = 0;
    int next = firstUsable(fromRow);
    while (next < endRow) {
      take(next, number);
      int last = next;
      next = firstUsable(last + 1);
      int goesOn = goesOnAt(last, next);
      if (goesOn >= 0) {
        next = goesOn;
      } else {
        number++;
      }
    }
    row = Arrays.copyOf(row, size);
    wireMask = Arrays.copyOf(wireMask, size);
    segment = Arrays.copyOf(segment, size);
  }

  private void take(int recordRow, int number) {
    row[size] = recordRow;
    wireMask[size] = usedMask(recordRow);
    segment[size] = number;
    size++;
  }

  /** The first row from here on with any wire in use. */
  private int firstUsable(int fromRow) {
    int at = fromRow;
    while (at < endRow && usedMask(at) == 0) {
      at++;
    }
    return at;
  }

  /**
   * The first of the next few usable rows that shares a wire with the last one; the rows before it
   * can't be tied to the rest and are skipped. −1 when there is none.
   */
  private int goesOnAt(int last, int next) {
    int at = next;
    for (int tried = 0; tried < STRAY_ROWS && at < endRow; tried++) {
      if (visitBetween(last, at)) {
        return -1;
      }
      if (share(last, at)) {
        return at;
      }
      at = firstUsable(at + 1);
    }
    return -1;
  }

  private boolean visitBetween(int last, int next) {
    int found = Arrays.binarySearch(visitEnds, last + 1);
    int visit = found >= 0 ? found : -found - 1;
    return visit < visitEnds.length && visitEnds[visit] <= next;
  }

  private boolean share(int one, int other) {
    int common = usedMask(one) & usedMask(other);
    for (int wire = 0; common != 0; wire++, common >>>= 1) {
      if ((common & 1) != 0 && sameCalibration(wire, one, other)) {
        return true;
      }
    }
    return false;
  }

  private boolean sameCalibration(int wire, int one, int other) {
    return calibrationAt(wire, one) == calibrationAt(wire, other);
  }

  private int calibrationAt(int wire, int recordRow) {
    return wires.get(wire).calibration(recordRow);
  }

  private int usedMask(int recordRow) {
    return depths.usedMask(recordRow);
  }

  int size() {
    return size;
  }

  /** Rows of the record. */
  int[] rows() {
    return row;
  }

  int[] wireMasks() {
    return wireMask;
  }

  int[] segments() {
    return segment;
  }

  boolean used(int wire, int index) {
    return (wireMask[index] >>> wire & 1) != 0;
  }

  long stampMs(int index) {
    return record.stampMs(row[index]);
  }

  long intervalMs(int index) {
    return sampling.intervalMs(row[index]);
  }

  /** Number of the wire's calibration in force. */
  int calibration(int wire, int index) {
    return calibrationAt(wire, row[index]);
  }
}
