package org.rimebook.depth;

import java.util.stream.IntStream;
import org.rimebook.depth.OffsetHabit.WireHabit;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;

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
   * @param record the readings
   * @param depths their depths
   * @param sheet the station sheet
   * @param notebook its service visits in force cut the level
   */
  public static LevelSeries combine(
      SeasonRecord record, WireDepths depths, StationSheet sheet, Notebook notebook) {
    CalibrationSpans[] spans =
        sheet.wires().stream()
            .map(wire -> CalibrationSpans.of(wire, record))
            .toArray(CalibrationSpans[]::new);
    UsableRows rows = UsableRows.of(record, depths, spans, notebook);
    double[][] depthMm = usedDepthsMm(rows, depths);
    WireHabit[] habits = habits(rows, depthMm);
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
    return new LevelSeries(rows.rows(), levelMm, rows.wireMasks(), rows.segments());
  }

  private static double[][] usedDepthsMm(UsableRows rows, WireDepths depths) {
    double[][] depthMm = new double[depths.wires()][rows.size()];
    for (int wire = 0; wire < depthMm.length; wire++) {
      for (int i = 0; i < rows.size(); i++) {
        depthMm[wire][i] = depths.depthMm(wire, rows.rows()[i]);
      }
    }
    return depthMm;
  }

  private static WireHabit[] habits(UsableRows rows, double[][] depthMm) {
    OffsetHabit habit = new OffsetHabit(rows, depthMm);
    return IntStream.range(0, depthMm.length).mapToObj(habit::of).toArray(WireHabit[]::new);
  }
}
