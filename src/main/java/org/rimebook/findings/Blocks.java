package org.rimebook.findings;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.Robust;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

/**
 * A season in blocks of ten minutes, or of the sampling interval in whole tens of minutes when that
 * is longer: what checks need that don't care for single readings. Blocks follow each other without
 * holes from the one with the first reading to the one with the last; a reading belongs to the
 * block its stamp closes, (start, start + length].
 */
public final class Blocks {

  private static final long TEN_MINUTES_MS = 600_000;

  /** Differences fewer than this tell nothing of the noise; own choice. */
  private static final int LEAST_DIFFERENCES = 4;

  private final Scene scene;
  private final long startMs;
  private final long lengthMs;
  private final int[] firstRow;
  private final double[][] depthMm;
  private final double[][] noiseMm;
  private final int[][] used;
  private final Map<String, double[]> channels = new ConcurrentHashMap<>();
  private double[] levelMm = {};
  private int[] segment = {};

  private Blocks(Scene scene, long startMs, long lengthMs, int size) {
    this.scene = scene;
    this.startMs = startMs;
    this.lengthMs = lengthMs;
    this.firstRow = new int[size + 1];
    int wires = scene.depths().wires();
    this.depthMm = new double[wires][size];
    this.noiseMm = new double[wires][size];
    this.used = new int[wires][size];
  }

  static Blocks of(Scene scene) {
    SeasonRecord record = scene.record();
    long longest = record.sampling().stream().mapToLong(run -> run.intervalMs()).max().orElse(0);
    long tens = Math.max(1, Math.floorDiv(longest + TEN_MINUTES_MS - 1, TEN_MINUTES_MS));
    long length = tens * TEN_MINUTES_MS;
    long start = Math.floorDiv(record.stampMs(0) - 1, length) * length;
    long last = record.stampMs(record.size() - 1);
    Blocks blocks =
        new Blocks(scene, start, length, (int) Math.floorDiv(last - 1 - start, length) + 1);
    blocks.cut(record);
    for (int wire = 0; wire < scene.depths().wires(); wire++) {
      blocks.fill(wire);
    }
    blocks.fillLevel();
    return blocks;
  }

  private void cut(SeasonRecord record) {
    int row = 0;
    for (int block = 0; block < size(); block++) {
      while (row < record.size() && record.stampMs(row) <= startMs + block * lengthMs) {
        row++;
      }
      firstRow[block] = row;
    }
    firstRow[size()] = record.size();
  }

  private void fill(int wire) {
    WireDepths depths = scene.depths();
    double[] values = new double[mostRows()];
    double[] steps = new double[values.length];
    for (int block = 0; block < size(); block++) {
      int count = 0;
      int differences = 0;
      for (int row = firstRow[block]; row < firstRow[block + 1]; row++) {
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
      while (index < level.size() && level.row(index) < firstRow[block + 1]) {
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
      most = Math.max(most, firstRow[block + 1] - firstRow[block]);
    }
    return most;
  }

  /** Blocks. */
  public int size() {
    return firstRow.length - 1;
  }

  /** Wires. */
  public int wires() {
    return depthMm.length;
  }

  /** Length of a block [ms]. */
  public long lengthMs() {
    return lengthMs;
  }

  /** Start of a block [ms since epoch]; that of the block after the last too. */
  public long startMs(int block) {
    return startMs + block * lengthMs;
  }

  /** The block whose time holds an instant, or the first or last. */
  public int at(long epochMs) {
    return (int) Math.max(0, Math.min(size() - 1, Math.floorDiv(epochMs - startMs, lengthMs)));
  }

  /** The time of blocks, the last one outside. */
  public Interval span(int fromBlock, int toBlock) {
    return new Interval(startMs(fromBlock), startMs(toBlock));
  }

  /** First row of a block; rows go up to that of the next. */
  public int firstRow(int block) {
    return firstRow[block];
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
    return channels.computeIfAbsent(quantity, this::means).clone();
  }

  private double[] means(String quantity) {
    int channel = scene.sheet().channel(quantity).map(scene.sheet().channels()::indexOf).orElse(-1);
    if (channel < 0) {
      return new double[0];
    }
    Column column = scene.record().channel(channel);
    double[] means = new double[size()];
    for (int block = 0; block < means.length; block++) {
      means[block] =
          Arrays.stream(values(column, block))
              .filter(Double::isFinite)
              .average()
              .orElse(Double.NaN);
    }
    return means;
  }

  private double[] values(Column column, int block) {
    double[] values = new double[firstRow[block + 1] - firstRow[block]];
    for (int i = 0; i < values.length; i++) {
      values[i] = column.get(firstRow[block] + i);
    }
    return values;
  }
}
