package org.rimebook.desk.series;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The least and the greatest value of a series over blocks of readings, over blocks of blocks, and
 * so on, so that those of any stretch are found without looking at each reading. Takes a fifth of
 * the memory of the values. Immutable when the series is.
 */
public final class Pyramid {

  private static final int BLOCK_SHIFT = 4;
  private static final int FACTOR_SHIFT = 2;
  private static final int BLOCK = 1 << BLOCK_SHIFT;
  private static final int FACTOR = 1 << FACTOR_SHIFT;

  /** Values taken from the series at a time: whole blocks, and few enough to stay at hand. */
  private static final int COPIED = 1 << 12;

  private final Series series;

  /** By level, and for each block its least value and then its greatest: one place in memory. */
  private final double[][] pairs;

  /** Which readings have a value. */
  private final BitSet valued;

  private Pyramid(Series series) {
    this.series = series;
    long[] bits = new long[(series.size() + Long.SIZE - 1) / Long.SIZE];
    List<double[]> levels = new ArrayList<>();
    double[] level = lowest(series, bits);
    while (level.length > 0) {
      levels.add(level);
      level = above(level);
    }
    pairs = levels.toArray(double[][]::new);
    valued = BitSet.valueOf(bits);
  }

  /** Builds the pyramid of a series, looking at each reading once. */
  public static Pyramid of(Series series) {
    return new Pyramid(series);
  }

  private static double[] lowest(Series series, long[] bits) {
    int size = series.size();
    double[] level = new double[2 * (size / BLOCK)];
    double[] values = new double[Math.min(size, COPIED)];
    for (int from = 0; from < size; from += COPIED) {
      if (size - from < values.length) {
        values = new double[size - from];
      }
      series.copy(from, values);
      lowest(values, from, level, bits);
    }
    return level;
  }

  /** Adds some values, the first of which begins a block. */
  private static void lowest(double[] values, int from, double[] level, long[] bits) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int at = 0; at < values.length; at++) {
      int i = from + at;
      double value = values[at];
      if (!Double.isNaN(value)) {
        bits[i / Long.SIZE] |= 1L << i;
        least = Math.min(least, value);
        most = Math.max(most, value);
      }
      if (i % BLOCK == BLOCK - 1) {
        level[i / BLOCK * 2] = least;
        level[i / BLOCK * 2 + 1] = most;
        least = Double.POSITIVE_INFINITY;
        most = Double.NEGATIVE_INFINITY;
      }
    }
  }

  private static double[] above(double[] below) {
    double[] level = new double[below.length / (2 * FACTOR) * 2];
    for (int at = 0; at < level.length; at += 2) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int from = at * FACTOR; from < (at + 2) * FACTOR; from += 2) {
        least = Math.min(least, below[from]);
        most = Math.max(most, below[from + 1]);
      }
      level[at] = least;
      level[at + 1] = most;
    }
    return level;
  }

  /** The series. */
  public Series series() {
    return series;
  }

  /** The first reading from an index on that has a value; -1 when none has. */
  int firstValued(int fromIndex) {
    return valued.nextSetBit(fromIndex);
  }

  /** The last reading before an index that has a value; -1 when none has. */
  int lastValued(int toIndex) {
    return valued.previousSetBit(toIndex - 1);
  }

  /**
   * The least and the greatest value of some readings. Looks first at the largest blocks that are
   * whole inside, then outwards at smaller ones, and no further at an end where the block that
   * holds it has nothing beyond what was found: of most columns no reading need be looked at, which
   * saves the memory most reads.
   */
  void extremes(int fromIndex, int toIndex, Extremes in) {
    in.clear();
    int level = largestInside(fromIndex, toIndex);
    if (level < 0) {
      readings(fromIndex, toIndex, in);
      return;
    }
    int from = up(fromIndex, level);
    int to = toIndex >> shift(level);
    blocks(level, from, to, in);
    before(level, from, fromIndex, in);
    after(level, to, toIndex, in);
  }

  /** The level of the largest blocks of which one is whole among some readings; -1 for none. */
  private int largestInside(int fromIndex, int toIndex) {
    int level = pairs.length - 1;
    while (level >= 0 && up(fromIndex, level) >= toIndex >> shift(level)) {
      level--;
    }
    return level;
  }

  /** Looks at the readings from an index on that lie before a block. */
  private void before(int largest, int block, int fromIndex, Extremes in) {
    int to = block;
    for (int level = largest; to << shift(level) > fromIndex; level--) {
      if (nothingBeyond(level, to - 1, in)) {
        return;
      }
      if (level == 0) {
        readings(fromIndex, to * BLOCK, in);
        return;
      }
      int from = up(fromIndex, level - 1);
      blocks(level - 1, from, to * FACTOR, in);
      to = from;
    }
  }

  /** Looks at the readings up to an index that lie in a block and after it. */
  private void after(int largest, int block, int toIndex, Extremes in) {
    int from = block;
    for (int level = largest; from << shift(level) < toIndex; level--) {
      if (nothingBeyond(level, from, in)) {
        return;
      }
      if (level == 0) {
        readings(from * BLOCK, toIndex, in);
        return;
      }
      int to = toIndex >> shift(level - 1);
      blocks(level - 1, from * FACTOR, to, in);
      from = to;
    }
  }

  /** Whether a block is known and has no value beyond those found. */
  private boolean nothingBeyond(int level, int block, Extremes in) {
    double[] of = pairs[level];
    return 2 * block < of.length && of[2 * block] >= in.least && of[2 * block + 1] <= in.most;
  }

  private void readings(int from, int to, Extremes in) {
    for (int i = from; i < to; i++) {
      double value = series.value(i);
      if (value < in.least) {
        in.least = value;
      }
      if (value > in.most) {
        in.most = value;
      }
    }
  }

  private void blocks(int level, int from, int to, Extremes in) {
    double[] of = pairs[level];
    for (int at = 2 * from; at < 2 * to; at += 2) {
      if (of[at] < in.least) {
        in.least = of[at];
      }
      if (of[at + 1] > in.most) {
        in.most = of[at + 1];
      }
    }
  }

  /** The first block of a level that starts at a reading or after it. */
  private static int up(int index, int level) {
    return (index + (1 << shift(level)) - 1) >> shift(level);
  }

  /** The power of two of the readings in a block of a level. */
  private static int shift(int level) {
    return BLOCK_SHIFT + FACTOR_SHIFT * level;
  }

  /** The least and the greatest of some values; the least is above the greatest when none is. */
  static final class Extremes {
    double least;
    double most;

    void clear() {
      least = Double.POSITIVE_INFINITY;
      most = Double.NEGATIVE_INFINITY;
    }
  }
}
