package org.rimebook.command;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.rimebook.depth.Screening;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;

/**
 * What one wire read in a span of time. Counted are readings stamped after its start, up to and
 * with its end, as a stamp closes its sampling interval; a reading stamped at the start opens it.
 *
 * @param name the wire
 * @param used readings used
 * @param leftOut readings left out by reason
 * @param firstMm depth at the first used reading [mm]; NaN when there is none
 * @param lastMm depth at the last used reading [mm]; NaN when there is none
 */
record WireChange(
    String name, int used, Map<Screening, Integer> leftOut, double firstMm, double lastMm) {

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
    double first = Double.NaN;
    double last = Double.NaN;
    int end = record.firstRowAtOrAfter(span.toMs() + 1);
    for (int row = record.firstRowAtOrAfter(span.fromMs()); row < end; row++) {
      if (result.depths().used(wire, row)) {
        last = result.depths().depthMm(wire, row);
        first = Double.isNaN(first) ? last : first;
      }
      if (record.stampMs(row) > span.fromMs()) {
        count.merge(result.depths().screening(wire, row), 1, Integer::sum);
      }
    }
    Integer used = count.remove(Screening.USED);
    String name = result.season().sheet().wires().get(wire).name();
    return new WireChange(name, used == null ? 0 : used, count, first, last);
  }

  /** Change of depth from the first to the last used reading [mm]; NaN when there is none. */
  double changeMm() {
    return lastMm - firstMm;
  }
}
