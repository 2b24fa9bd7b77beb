package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.Visit;
import org.rimebook.practice.bench.Draws;
import org.rimebook.practice.bench.Planting;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Calibration;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/** Wrong station sheets: wires exchanged, and calibrations that aren't those of the wires. */
final class SheetFaults {

  /** An exchange that never moves a depth by more than this [mm] needn't be found. */
  private static final double SMALL_MM = 12;

  /** An offset of this [mm] and share of the depth, or such a slope, is plain to see. */
  private static final double PLAIN_MM = 5;

  private static final double PLAIN_SHARE = 0.03;
  private static final double PLAIN_SLOPE = 0.045;
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
          return sheet.withWires(wires);
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

  /** A wrong by some per cent on one wire. */
  static void wrongA(Planting planting) {
    double factor = 1 + planting.draws().between(0.02, 0.08) * sign(planting);
    miswritten(
        planting, c -> new Calibration(c.from(), factor * c.aCmPerHz(), c.bCmPerHz2(), c.f0Hz()));
  }

  /** Two digits of f0 exchanged on one wire. */
  static void digitsExchanged(Planting planting) {
    int place = planting.draws().chance(0.7) ? 1 : 10;
    miswritten(
        planting,
        c -> new Calibration(c.from(), c.aCmPerHz(), c.bCmPerHz2(), exchanged(c.f0Hz(), place)));
  }

  /** B ten times too small or too large on one wire. */
  static void slippedB(Planting planting) {
    double factor = planting.draws().chance(0.5) ? 10 : 0.1;
    miswritten(
        planting, c -> new Calibration(c.from(), c.aCmPerHz(), factor * c.bCmPerHz2(), c.f0Hz()));
  }

  private static int sign(Planting planting) {
    return planting.draws().chance(0.5) ? 1 : -1;
  }

  /** Exchanges the digit of a place with the one before it. */
  private static double exchanged(double hz, int place) {
    long low = Math.floorMod((long) (hz / place), 10L);
    long high = Math.floorMod((long) (hz / (10L * place)), 10L);
    return hz + (high - low) * place + (low - high) * 10.0 * place;
  }

  private static void miswritten(Planting planting, UnaryOperator<Calibration> slip) {
    int wrong = planting.draws().below(planting.sheet().wires().size());
    Wire right = planting.sheet().wires().get(wrong);
    Calibration written = slip.apply(right.calibrations().get(0));
    CalibrationCurve curve = CalibrationCurve.of(written);
    double[] read =
        DoubleStream.of(LOADS_MM).map(mm -> curve.depthMm(curve(right).frequencyHz(mm))).toArray();
    double off = Math.abs(read[0] - LOADS_MM[0]) / (PLAIN_MM + PLAIN_SHARE * LOADS_MM[0]);
    double slope = (read[2] - read[0]) / (LOADS_MM[2] - LOADS_MM[0]);
    if (off > 1 || Math.abs(slope - 1) > PLAIN_SLOPE) {
      planting.due(FindingKind.CALIBRATION, planting.span(), right.name());
    } else {
      planting.may(FindingKind.CALIBRATION, planting.span(), right.name());
    }
    planting.writes(
        sheet -> {
          List<Wire> wires = new ArrayList<>(sheet.wires());
          wires.set(
              wrong,
              new Wire(right.name(), right.frequencyColumn(), right.lead(), List.of(written)));
          return sheet.withWires(wires);
        });
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
}
