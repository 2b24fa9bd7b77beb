package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.Visit;
import org.rimebook.practice.bench.Draws;
import org.rimebook.practice.bench.Planting;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/** Wrong station sheets: wires exchanged, and calibrations that aren't those of the wires. */
final class SheetFaults {

  /** An exchange that never moves a depth by more than this [mm] needn't be found. */
  private static final double SMALL_MM = 12;

  private static final double[] LOADS_MM = {150, 250, 400};
  private static final long MINUTE_MS = 60_000;

  private SheetFaults() {}

  /** Somebody wrote the columns down in another order. */
  static void columnsExchanged(Planting planting) {
    int[] order = order(planting);
    note(planting, planting.span(), order);
    planting.writes(
        sheet -> {
          List<Wire> wires = new ArrayList<>();
          for (int wire = 0; wire < order.length; wire++) {
            Wire own = sheet.wires().get(wire);
            String column = sheet.wires().get(order[wire]).frequencyColumn();
            wires.add(new Wire(own.name(), column, own.lead(), own.calibrations()));
          }
          return with(sheet, wires);
        });
    // A record is read by the sheet's columns, so it changes with them.
    int channels = planting.sheet().channels().size();
    planting.logs(record -> exchanged(record, channels, order, 0));
  }

  /** Somebody put the leads back in another order at a visit. */
  static void leadsExchanged(Planting planting) {
    int[] order = order(planting);
    Interval span = planting.span();
    Draws draws = planting.draws();
    Interval visit;
    do {
      long from = span.fromMs() + (long) (draws.between(0.1, 0.85) * span.lengthMs());
      from = from / MINUTE_MS * MINUTE_MS;
      visit = new Interval(from, from + (long) draws.between(40, 120) * MINUTE_MS);
    } while (!planting.take(visit));
    planting.builder().visit(new Visit(visit, false, 0));
    planting.due(FindingKind.UNMARKED_VISIT, visit);
    note(planting, new Interval(visit.toMs(), span.toMs()), order);
    long since = (visit.fromMs() + visit.toMs()) / 2;
    int channels = planting.sheet().channels().size();
    planting.logs(record -> exchanged(record, channels, order, record.firstRowAtOrAfter(since)));
  }

  private static int[] order(Planting planting) {
    int wires = planting.sheet().wires().size();
    List<Integer> order = new ArrayList<>(IntStream.range(0, wires).boxed().toList());
    if (planting.draws().chance(0.75)) {
      int one = planting.draws().below(wires);
      Collections.swap(order, one, (one + 1) % wires);
    } else {
      Collections.rotate(order, 1);
    }
    return order.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void note(Planting planting, Interval span, int[] order) {
    List<Wire> wires = planting.sheet().wires();
    double most = 0;
    List<String> moved = new ArrayList<>();
    for (int wire = 0; wire < order.length; wire++) {
      if (order[wire] != wire) {
        moved.add(wires.get(wire).name());
        CalibrationCurve own = curve(wires.get(wire));
        CalibrationCurve read = curve(wires.get(order[wire]));
        for (double loadMm : LOADS_MM) {
          most = Math.max(most, Math.abs(own.depthMm(read.frequencyHz(loadMm)) - loadMm));
        }
      }
    }
    String[] names = moved.toArray(String[]::new);
    if (most > SMALL_MM) {
      planting.due(FindingKind.EXCHANGED_WIRES, span, names);
    } else {
      planting.may(FindingKind.EXCHANGED_WIRES, span, names);
      planting.may(FindingKind.CALIBRATION, span, names);
    }
  }

  private static CalibrationCurve curve(Wire wire) {
    return CalibrationCurve.of(wire.calibrations().get(0));
  }

  /** From a row on, the place of each wire holds another's frequencies. */
  private static SeasonRecord exchanged(
      SeasonRecord record, int channelCount, int[] order, int fromRow) {
    List<Column> columns = new ArrayList<>();
    for (int wire = 0; wire < order.length; wire++) {
      double[] values = new double[record.size()];
      for (int row = 0; row < values.length; row++) {
        values[row] = record.frequency(row < fromRow ? wire : order[wire]).get(row);
      }
      columns.add(Column.copyOf(values, values.length));
    }
    long[] stamps = IntStream.range(0, record.size()).mapToLong(record::stampMs).toArray();
    List<Column> channels = IntStream.range(0, channelCount).mapToObj(record::channel).toList();
    return new SeasonRecord(stamps, columns, channels, record.sampling(), record.provenance());
  }

  private static StationSheet with(StationSheet sheet, List<Wire> wires) {
    return new StationSheet(
        sheet.name(),
        sheet.latitudeDeg(),
        sheet.longitudeDeg(),
        sheet.elevationM(),
        sheet.utcOffset(),
        sheet.dayStartsAt(),
        sheet.gauge(),
        wires,
        sheet.layout(),
        sheet.channels());
  }
}
