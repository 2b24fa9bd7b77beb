package org.rimebook.depth;

/**
 * Level of the bucket [mm] at the rows where at least one wire is used. Levels compare within a
 * segment: there, wires lost and back make no step. Nothing is said across segments, which are cut
 * where the level has no continuity (a service visit, a calibration that replaces every wire's).
 */
public final class LevelSeries {

  private final int[] row;
  private final double[] levelMm;
  private final int[] wireMask;
  private final int[] segment;

  /**
   * @param row row of the record of each level, strictly increasing; copied
   * @param levelMm level [mm], finite; copied
   * @param wireMask bit w set when wire w was used in the row; copied
   * @param segment number of the segment, starting at 0 and never falling; copied
   */
  LevelSeries(int[] row, double[] levelMm, int[] wireMask, int[] segment) {
    this.row = row.clone();
    this.levelMm = levelMm.clone();
    this.wireMask = wireMask.clone();
    this.segment = segment.clone();
  }

  /** Levels. */
  public int size() {
    return row.length;
  }

  /** Row of the record. */
  public int row(int index) {
    return row[index];
  }

  /** Level [mm]. */
  public double levelMm(int index) {
    return levelMm[index];
  }

  /** Bit w set when wire w was used. */
  public int wireMask(int index) {
    return wireMask[index];
  }

  /** Number of the segment. */
  public int segment(int index) {
    return segment[index];
  }
}
