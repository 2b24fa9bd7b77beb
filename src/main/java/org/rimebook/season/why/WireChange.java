package org.rimebook.season.why;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.depth.Screening;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/**
 * What one wire read in a span of time. Counted are readings stamped after its start, up to and
 * with its end, as a stamp closes its sampling interval; a reading stamped at the start opens it.
 *
 * @param name the wire
 * @param used readings used
 * @param leftOut readings left out by reason
 * @param ends the first and the last used reading; empty when there is none
 */
record WireChange(String name, int used, Map<Screening, Integer> leftOut, Optional<Ends> ends) {

  /**
   * The first and the last used reading.
   *
   * @param firstRow row of the first
   * @param lastRow row of the last
   * @param firstMm depth at the first [mm]
   * @param lastMm depth at the last [mm]
   * @param compare whether the change between them is one of the load: one calibration, and no
   *     break of the level
   */
  record Ends(int firstRow, int lastRow, double firstMm, double lastMm, boolean compare) {

    /** Change of depth [mm]. */
    double changeMm() {
      return lastMm - firstMm;
    }

    /** Whether both are the first and last readings of another wire too, and compare. */
    boolean alike(Ends other) {
      return compare && other.compare && firstRow == other.firstRow && lastRow == other.lastRow;
    }
  }

  static List<WireChange> of(SeasonResult result, Interval span) {
    List<WireChange> changes = new ArrayList<>();
    for (int wire = 0; wire < result.depths().wires(); wire++) {
      changes.add(of(result, wire, span));
    }
    return changes;
  }

  private static WireChange of(SeasonResult result, int wire, Interval span) {
    SeasonRecord record = result.season().record();
    Map<Screening, Integer> count = new EnumMap<>(Screening.class);
    int first = -1;
    int last = -1;
    int end = record.firstRowAtOrAfter(span.toMs() + 1);
    for (int row = record.firstRowAtOrAfter(span.fromMs()); row < end; row++) {
      if (result.depths().used(wire, row)) {
        last = row;
        first = first < 0 ? row : first;
      }
      if (record.stampMs(row) > span.fromMs()) {
        count.merge(result.depths().screening(wire, row), 1, Integer::sum);
      }
    }
    Integer used = count.remove(Screening.USED);
    return new WireChange(
        result.season().sheet().wires().get(wire).name(),
        used == null ? 0 : used,
        count,
        first < 0 ? Optional.empty() : Optional.of(ends(result, wire, first, last)));
  }

  private static Ends ends(SeasonResult result, int wire, int first, int last) {
    SeasonRecord record = result.season().record();
    Wire sheet = result.season().sheet().wires().get(wire);
    boolean oneCalibration =
        sheet
            .calibrationAt(record.stampMs(first))
            .equals(sheet.calibrationAt(record.stampMs(last)));
    return new Ends(
        first,
        last,
        result.depths().depthMm(wire, first),
        result.depths().depthMm(wire, last),
        oneCalibration && segment(result, first) == segment(result, last));
  }

  private static int segment(SeasonResult result, int row) {
    int index = 0;
    while (result.level().row(index) < row) {
      index++;
    }
    return result.level().segment(index);
  }
}
