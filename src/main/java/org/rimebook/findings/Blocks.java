package org.rimebook.findings;

import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.Robust;
import org.rimebook.depth.WireDepths;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

/**
 * A season in blocks of ten minutes, or of the sampling interval in whole tens of minutes when that
 * is longer: what checks need that don't care for single readings. Blocks follow each other without
 * holes from the one with the first reading to the one with the last; a reading belongs to the
 * block its stamp closes, (start, start + length].
 */
public final class Blocks {

  /** Differences fewer than this tell nothing of the noise; own choice. */
  private static final int LEAST_DIFFERENCES = 4;

  private final Scene scene;
  private final RecordFacts.Grid grid;
  private final double[][] depthMm;
  private final double[][] noiseMm;
  private final int[][] used;
  private double[] levelMm = {};
  private int[] segment = {};

  private Blocks(Scene scene, RecordFacts.Grid grid) {
    this.scene = scene;
    this.grid = grid;
    int size = grid.size();
    int wires = scene.depths().wires();
    this.depthMm = new double[wires][size];
    this.noiseMm = new double[wires][size];
    this.used = new int[wires][size];
  }

  static Blocks of(Scene scene) {
    Blocks blocks = new Blocks(scene, scene.facts().grid());
    for (int wire = 0; wire < scene.depths().wires(); wire++) {
      blocks.fill(wire);
    }
    blocks.fillLevel();
    return blocks;
  }

  private void fill(int wire) {
    WireDepths depths = scene.depths();
    double[] values = new double[mostRows()];
    double[] steps = new double[values.length];
    for (int block = 0; block < size(); block++) {
      int count = 0;
      int differences = 0;
      for (int row = grid.firstRow()[block]; row < grid.firstRow()[block + 1]; row++) {
        if (depths.used(wire, row)) {
          if (count > 0) {
            steps[differences++] = Math.abs(depths.depthMm(wire, row) - values[count - 1]);
          }
          values[count++] = depths.depthMm(wire, row);
        }
      }
      used[wire][block] = count;
      noiseMm[wire][block] =
          differences < LEAST_DIFFERENCES
              ? Double.NaN
              : Robust.sdFromMagnitudesInPlace(steps, differences) / Math.sqrt(2);
      depthMm[wire][block] = count == 0 ? Double.NaN : Robust.medianInPlace(values, count);
    }
  }

  private void fillLevel() {
    LevelSeries level = scene.level();
    levelMm = new double[size()];
    segment = new int[size()];
    double[] values = new double[mostRows()];
    int index = 0;
    for (int block = 0; block < size(); block++) {
      int count = 0;
      boolean whole = true;
      segment[block] = -1;
      while (index < level.size() && level.row(index) < grid.firstRow()[block + 1]) {
        whole &= count == 0 || level.segment(index) == segment[block];
        segment[block] = level.segment(index);
        values[count++] = level.levelMm(index);
        index++;
      }
      levelMm[block] = count == 0 || !whole ? Double.NaN : Robust.medianInPlace(values, count);
    }
  }

  private int mostRows() {
    int most = 1;
    for (int block = 0; block < size(); block++) {
      most = Math.max(most, grid.firstRow()[block + 1] - grid.firstRow()[block]);
    }
    return most;
  }

  /** Blocks. */
  public int size() {
    return grid.size();
  }

  /** Wires. */
  public int wires() {
    return depthMm.length;
  }

  /** Length of a block [ms]. */
  public long lengthMs() {
    return grid.lengthMs();
  }

  /** Start of a block [ms since epoch]; that of the block after the last too. */
  public long startMs(int block) {
    return grid.startMs() + block * grid.lengthMs();
  }

  /** The block whose time holds an instant, or the first or last. */
  public int at(long epochMs) {
    return (int)
        Math.max(0, Math.min(size() - 1, Math.floorDiv(epochMs - grid.startMs(), grid.lengthMs())));
  }

  /** The time of blocks, the last one outside. */
  public Interval span(int fromBlock, int toBlock) {
    return new Interval(startMs(fromBlock), startMs(toBlock));
  }

  /** First row of a block; rows go up to that of the next. */
  public int firstRow(int block) {
    return grid.firstRow()[block];
  }

  /** Readings of a wire in a block that are used. */
  public int used(int wire, int block) {
    return used[wire][block];
  }

  /** Median depth of a wire's used readings [mm]; NaN when there is none. */
  public double depthMm(int wire, int block) {
    return depthMm[wire][block];
  }

  /**
   * Noise of a wire's reading from the differences of readings that follow each other [mm]; NaN
   * when the block has too few.
   */
  public double noiseMm(int wire, int block) {
    return noiseMm[wire][block];
  }

  /** Median level of the bucket [mm]; NaN when there is none, or two that don't compare. */
  public double levelMm(int block) {
    return levelMm[block];
  }

  /** Segment in which a block's level compares with others; −1 when it has none. */
  public int segment(int block) {
    return segment[block];
  }

  /**
   * Means of a channel in its unit inside, one a block, NaN where it gave nothing.
   *
   * @param quantity what is measured, a {@link Channel} constant
   * @return no elements when the station doesn't measure it
   */
  public double[] channel(String quantity) {
    return scene.facts().channel(quantity);
  }
}
