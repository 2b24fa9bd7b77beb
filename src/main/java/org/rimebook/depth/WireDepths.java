package org.rimebook.depth;

/** Depth of each wire at each row of the record, with the reason where a reading isn't used. */
public final class WireDepths {

  private final double[][] depthMm;
  private final byte[][] screening;

  /**
   * @param depthMm depth [mm] by wire and row, NaN where it can't be computed; copied
   * @param screening ordinal of {@link Screening} by wire and row; copied
   */
  WireDepths(double[][] depthMm, byte[][] screening) {
    this.depthMm = new double[depthMm.length][];
    this.screening = new byte[screening.length][];
    for (int wire = 0; wire < depthMm.length; wire++) {
      this.depthMm[wire] = depthMm[wire].clone();
      this.screening[wire] = screening[wire].clone();
    }
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

  /** Whether the reading is used, and if not, why. */
  public Screening screening(int wire, int row) {
    return Screening.ofOrdinal(screening[wire][row]);
  }

  /** Whether the reading is used. */
  public boolean used(int wire, int row) {
    return screening[wire][row] == 0;
  }
}
