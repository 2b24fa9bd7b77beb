package org.rimebook.depth;

import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.depth.OffsetHabit.WireHabit;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Progress;

/**
 * Combines the wires into the level of the bucket: their mean, which cancels tilt, with absent
 * wires bridged by {@link SegmentBridges} so that losing one or getting it back makes no step.
 *
 * <p>The level is cut into segments at service visits, where every wire's calibration changes at
 * once, and where no wire carries on from one reading to the next. Gaps don't cut it: the bucket
 * keeps its water.
 */
public final class WireCombiner {

  private WireCombiner() {}

  /**
   * The level of a season.
   *
   * @param converted the wires' depths
   * @param depths what of them is used
   * @param notebook its service visits in force cut the level
   * @param progress hears of it
   */
  public static LevelSeries combine(
      ConvertedWires converted, WireDepths depths, Notebook notebook, Progress progress) {
    progress.step("combining the wires", 0);
    RowRange all = new RowRange(0, converted.record().size());
    UsableRows rows = UsableRows.of(converted, depths, notebook, all);
    progress.step("combining the wires", 0.3);
    double[][] depthMm = usedDepthsMm(rows, depths);
    List<WireHabit> habits = habits(rows, depthMm);
    progress.step("combining the wires", 0.6);
    return new LevelSeries(levels(rows, depthMm, habits), habits);
  }

  /** The level at usable rows, segment by segment; the depths are bridged in place. */
  static LevelSeries.Levels levels(UsableRows rows, double[][] depthMm, List<WireHabit> habits) {
    double[] levelMm = new double[rows.size()];
    int first = 0;
    while (first < rows.size()) {
      int last = first;
      while (last + 1 < rows.size() && rows.segments()[last + 1] == rows.segments()[first]) {
        last++;
      }
      SegmentBridges segment = new SegmentBridges(rows, depthMm, habits, first, last);
      segment.bridge();
      for (int i = first; i <= last; i++) {
        levelMm[i] = segment.levelMm(i);
      }
      first = last + 1;
    }
    return new LevelSeries.Levels(rows.rows(), levelMm, rows.wireMasks(), rows.segments());
  }

  static double[][] usedDepthsMm(UsableRows rows, WireDepths depths) {
    double[][] depthMm = new double[depths.wires()][rows.size()];
    for (int wire = 0; wire < depthMm.length; wire++) {
      for (int i = 0; i < rows.size(); i++) {
        depthMm[wire][i] = depths.depthMm(wire, rows.rows()[i]);
      }
    }
    return depthMm;
  }

  private static List<WireHabit> habits(UsableRows rows, double[][] depthMm) {
    OffsetHabit habit = new OffsetHabit(rows, depthMm);
    return IntStream.range(0, depthMm.length).mapToObj(habit::of).toList();
  }
}
