package org.rimebook.depth;

import java.util.List;
import org.rimebook.depth.OffsetHabit.WireHabit;

/**
 * Level of the bucket [mm] at the rows where at least one wire is used. Levels compare within a
 * segment: there, wires lost and back make no step. Nothing is said across segments, which are cut
 * where the level has no continuity (a service visit, a calibration that replaces every wire's).
 */
public final class LevelSeries {

  private final Levels levels;
  private final Levels middle;
  private final Join join;
  private final List<WireHabit> habits;

  /**
   * Levels by index.
   *
   * @param row row of the record of each level, strictly increasing
   * @param levelMm level [mm], finite
   * @param wireMask bit w set when wire w was used in the row
   * @param segment number of the segment, starting at 0 and never falling
   */
  record Levels(int[] row, double[] levelMm, int[] wireMask, int[] segment) {}

  /**
   * How other levels take the place of some in the middle.
   *
   * @param from index of the first of them
   * @param to index of the first level after them
   * @param skip by how much the index of a level after them was greater
   * @param liftEnd the first index after them that isn't lifted
   * @param liftMm what the levels from {@code to} to {@code liftEnd} are lifted by [mm]
   * @param segments by how much the numbers of segments after them are greater
   */
  record Join(int from, int to, int skip, int liftEnd, double liftMm, int segments) {

    static final Join NONE = new Join(Integer.MAX_VALUE, Integer.MAX_VALUE, 0, 0, 0, 0);
  }

  /**
   * @param levels taken over
   * @param habits what is usual of each wire
   */
  LevelSeries(Levels levels, List<WireHabit> habits) {
    this(levels, levels, Join.NONE, habits);
  }

  private LevelSeries(Levels levels, Levels middle, Join join, List<WireHabit> habits) {
    this.levels = levels;
    this.middle = middle;
    this.join = join;
    this.habits = habits;
  }

  /**
   * This series, which isn't itself joined, with other levels in its middle.
   *
   * @param other levels in place of its own; taken over
   * @param at where they go
   */
  LevelSeries with(Levels other, Join at) {
    if (join != Join.NONE) {
      throw new IllegalStateException("a series is joined once");
    }
    return new LevelSeries(levels, other, at, habits);
  }

  /** Levels. */
  public int size() {
    return levels.row.length - join.skip;
  }

  /** Row of the record. */
  public int row(int index) {
    return index < join.from
        ? levels.row[index]
        : index < join.to ? middle.row[index - join.from] : levels.row[index + join.skip];
  }

  /** Level [mm]. */
  public double levelMm(int index) {
    if (index < join.from) {
      return levels.levelMm[index];
    }
    if (index < join.to) {
      return middle.levelMm[index - join.from];
    }
    double liftMm = index < join.liftEnd ? join.liftMm : 0;
    return levels.levelMm[index + join.skip] + liftMm;
  }

  /** Bit w set when wire w was used. */
  public int wireMask(int index) {
    return index < join.from
        ? levels.wireMask[index]
        : index < join.to ? middle.wireMask[index - join.from] : levels.wireMask[index + join.skip];
  }

  /** Number of the segment. */
  public int segment(int index) {
    return index < join.from
        ? levels.segment[index]
        : index < join.to
            ? middle.segment[index - join.from]
            : levels.segment[index + join.skip] + join.segments;
  }

  /** The first index whose row isn't before a row of the record; the size when there is none. */
  public int indexAtOrAfter(int recordRow) {
    int low = 0;
    int high = size();
    while (low < high) {
      int middleIndex = (low + high) >>> 1;
      if (row(middleIndex) < recordRow) {
        low = middleIndex + 1;
      } else {
        high = middleIndex;
      }
    }
    return low;
  }

  /** What is usual of each wire, as learnt from the season. */
  List<WireHabit> habits() {
    return habits;
  }
}
