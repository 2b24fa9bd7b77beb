package org.rimebook.depth;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Depth of each wire at each row of the record, with the reason where a reading isn't used. */
public final class WireDepths {

  private final double[][] depthMm;
  private final byte[][] screening;
  private final List<String> notes;

  /**
   * @param depthMm depth [mm] by wire and row, NaN where it can't be computed; taken over
   * @param screening ordinal of {@link Screening} by wire and row; taken over
   * @param notes what was met and changed nothing, in words
   */
  WireDepths(double[][] depthMm, byte[][] screening, List<String> notes) {
    this.depthMm = depthMm;
    this.screening = screening;
    this.notes = List.copyOf(notes);
  }

  /** Wires. */
  public int wires() {
    return depthMm.length;
  }

  /** Rows. */
  public int size() {
    return depthMm.length == 0 ? 0 : depthMm[0].length;
  }

  /** Depth [mm] as computed, used or not; NaN where there is no frequency. */
  public double depthMm(int wire, int row) {
    return depthMm[wire][row];
  }

  /**
   * Copies the depths of some rows [mm], used or not.
   *
   * @param fromRow the first of them
   * @param into takes as many as it has room for
   */
  public void copyDepthMm(int wire, int fromRow, double[] into) {
    System.arraycopy(depthMm[wire], fromRow, into, 0, into.length);
  }

  /** Whether the reading is used, and if not, why. */
  public Screening screening(int wire, int row) {
    return Screening.ofOrdinal(screening[wire][row]);
  }

  /** Screening of a wire by row; not to be changed. */
  byte[] screening(int wire) {
    return screening[wire];
  }

  /** Whether the reading is used. */
  public boolean used(int wire, int row) {
    return screening[wire][row] == 0;
  }

  /** The rows from the first to the last, among some, that aren't screened as in other depths. */
  public Optional<RowRange> differing(WireDepths other, RowRange among) {
    int first = among.toRow();
    int end = among.fromRow();
    for (int wire = 0; wire < screening.length; wire++) {
      byte[] mine = screening[wire];
      byte[] theirs = other.screening[wire];
      int row = Arrays.mismatch(mine, among.fromRow(), first, theirs, among.fromRow(), first);
      first = row < 0 ? first : among.fromRow() + row;
      int last = among.toRow();
      while (last > end && mine[last - 1] == theirs[last - 1]) {
        last--;
      }
      end = Math.max(end, last);
    }
    return first < end ? Optional.of(new RowRange(first, end)) : Optional.empty();
  }

  /** Bit w set when wire w is used in a row. */
  int usedMask(int row) {
    int mask = 0;
    for (int wire = 0; wire < screening.length; wire++) {
      if (screening[wire][row] == 0) {
        mask |= 1 << wire;
      }
    }
    return mask;
  }

  /** What was met and changed nothing, in words: entries about wires the sheet doesn't have. */
  public List<String> notes() {
    return notes;
  }
}
