package org.rimebook.depth;

import java.util.Arrays;
import org.rimebook.record.SeasonRecord;

/** Screening of one wire, built up step by step over a range of rows. */
final class WireScreening {

  /** Readings further apart than this many sampling intervals aren't compared; own choice. */
  static final int SPIKE_GAP_INTERVALS = 5;

  private static final byte USED = (byte) Screening.USED.ordinal();
  private static final byte OUT_OF_RANGE = (byte) Screening.OUT_OF_RANGE.ordinal();
  private static final byte SPIKE = (byte) Screening.SPIKE.ordinal();

  private final ConvertedWires converted;
  private final ConvertedWire wire;
  private final byte[] screening;
  private final int fromRow;
  private final int toRow;

  /** All rows of a wire, none of them screened yet. */
  WireScreening(ConvertedWires converted, int wire) {
    this.converted = converted;
    this.wire = converted.wires().get(wire);
    this.screening = this.wire.screening().clone();
    this.fromRow = 0;
    this.toRow = screening.length;
  }

  /**
   * The rows of a wire that what happens in [from, to) may bear on, none of them screened yet; all
   * others as they were.
   *
   * @param before the screening as it was; copied
   */
  WireScreening(ConvertedWires converted, int wire, byte[] before, int from, int to) {
    this.converted = converted;
    this.wire = converted.wires().get(wire);
    this.screening = before.clone();
    this.fromRow = readingsBefore(from, SpikeScreen.REACH);
    this.toRow = readingsAfter(to, SpikeScreen.REACH);
    System.arraycopy(this.wire.screening(), fromRow, screening, fromRow, toRow - fromRow);
  }

  /** The row from which on there are so many readings before a row, spikes included. */
  private int readingsBefore(int row, int readings) {
    int at = row;
    int left = readings;
    while (at > 0 && left > 0) {
      at--;
      left -= screening[at] == USED || screening[at] == SPIKE ? 1 : 0;
    }
    return at;
  }

  private int readingsAfter(int row, int readings) {
    int at = row;
    int left = readings;
    while (at < screening.length && left > 0) {
      left -= screening[at] == USED || screening[at] == SPIKE ? 1 : 0;
      at++;
    }
    return at;
  }

  /** Leaves out the readings somebody has judged in the rows [from, to), unless judged before. */
  void leaveOut(int from, int to, Screening reason) {
    for (int row = Math.max(from, fromRow); row < Math.min(to, toRow); row++) {
      if (screening[row] == USED || screening[row] == OUT_OF_RANGE) {
        screening[row] = (byte) reason.ordinal();
      }
    }
  }

  /** Leaves out isolated spikes among the readings still used. */
  void leaveOutSpikes() {
    int[] rows =
        readings(
            readingsBefore(fromRow, SpikeScreen.REACH), readingsAfter(toRow, SpikeScreen.REACH));
    double[] depths = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      depths[i] = wire.depthMm()[rows[i]];
    }
    boolean[] spike = new boolean[rows.length];
    SpikeScreen screen =
        new SpikeScreen(depths, i -> wire.spikeFloorMm(rows[i]), wire.usualNoiseMm());
    int start = 0;
    for (int i = 1; i <= rows.length; i++) {
      if (i == rows.length || !comparable(rows[i - 1], rows[i])) {
        screen.mark(start, i, spike);
        start = i;
      }
    }
    for (int i = 0; i < rows.length; i++) {
      if (spike[i] && rows[i] >= fromRow && rows[i] < toRow) {
        screening[rows[i]] = SPIKE;
      }
    }
  }

  /** Rows from one to another that are used, or were but for being a spike. */
  private int[] readings(int from, int to) {
    int[] rows = new int[to - from];
    int size = 0;
    for (int row = from; row < to; row++) {
      if (screening[row] == USED || screening[row] == SPIKE) {
        rows[size++] = row;
      }
    }
    return Arrays.copyOf(rows, size);
  }

  /** A visit always lies between readings that it changed, so its readings count as a gap. */
  private boolean comparable(int row, int next) {
    if (wire.calibration(row) != wire.calibration(next)) {
      return false;
    }
    for (int between = row + 1; between < next; between++) {
      if (screening[between] == Screening.SERVICE_VISIT.ordinal()) {
        return false;
      }
    }
    SeasonRecord record = converted.record();
    long apartMs = record.stampMs(next) - record.stampMs(row);
    long intervalMs =
        Math.max(converted.sampling().intervalMs(row), converted.sampling().intervalMs(next));
    return apartMs <= SPIKE_GAP_INTERVALS * intervalMs;
  }

  byte[] screening() {
    return screening;
  }
}
