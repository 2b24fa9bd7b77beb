package org.rimebook.depth;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.Column;
import org.rimebook.record.IntSequence;
import org.rimebook.record.Provenance;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Calibration;
import org.rimebook.station.Gauge;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

/** Small invented gauges and records. */
final class Gauges {

  static final long MINUTE_MS = 60_000;
  static final Instant START = Instant.parse("2024-11-01T00:00:00Z");

  /** An ideal wire: A = 2 f0 B. */
  static final Calibration IDEAL = new Calibration(Optional.empty(), 0.0172, 0.0172 / 2100, 1050);

  private static final Entry.Header HEADER =
      new Entry.Header("e1", "2024-11-01T00:00:00Z", "ab", "");

  private Gauges() {}

  static Wire wire(String name, Calibration... calibrations) {
    return new Wire(name, "f_" + name, Optional.empty(), List.of(calibrations));
  }

  static StationSheet sheet(int wires) {
    List<Wire> list = new ArrayList<>();
    for (int i = 0; i < wires; i++) {
      list.add(wire("w" + i, IDEAL));
    }
    return sheet(list, OptionalDouble.of(600));
  }

  static StationSheet sheet(List<Wire> wires, OptionalDouble capacityMm) {
    return sheet(wires, capacityMm, OptionalDouble.empty());
  }

  static StationSheet sheet(List<Wire> wires, OptionalDouble capacityMm, OptionalDouble gateS) {
    RecordLayout layout =
        new RecordLayout(
            List.of("records/*.csv"),
            "time",
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            RecordLayout.TimeIs.END,
            gateS.isPresent()
                ? RecordLayout.FrequencyKind.COUNTS
                : RecordLayout.FrequencyKind.HERTZ,
            gateS);
    return new StationSheet(
        "Invented Ridge",
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        ZoneOffset.UTC,
        LocalTime.MIDNIGHT,
        new Gauge(200, capacityMm, OptionalDouble.empty(), WindShield.SINGLE_ALTER),
        wires,
        layout,
        List.of());
  }

  /** A record that logs the frequencies of wires on the ideal calibration at even steps. */
  static SeasonRecord record(long stepMs, double[]... depthMm) {
    CalibrationCurve curve = CalibrationCurve.of(IDEAL);
    double[][] frequencies =
        Arrays.stream(depthMm)
            .map(d -> Arrays.stream(d).map(v -> hertz(curve, v)).toArray())
            .toArray(double[][]::new);
    long[] stamps = new long[depthMm[0].length];
    for (int i = 0; i < stamps.length; i++) {
      stamps[i] = START.toEpochMilli() + (i + 1) * stepMs;
    }
    return recordOf(stamps, stepMs, frequencies);
  }

  private static double hertz(CalibrationCurve curve, double depthMm) {
    return Double.isNaN(depthMm) ? Double.NaN : curve.frequencyHz(depthMm);
  }

  static SeasonRecord recordOf(long[] stampsMs, long stepMs, double[]... logged) {
    int rows = stampsMs.length;
    IntSequence zeros = IntSequence.copyOf(new int[rows], rows);
    return new SeasonRecord(
        stampsMs,
        Arrays.stream(logged).map(c -> Column.copyOf(c, rows)).toList(),
        List.of(),
        rows == 0 ? List.of() : List.of(new SamplingRun(0, rows - 1, stepMs)),
        new Provenance(List.of(), zeros, zeros, ""));
  }

  /** Depths as they stand: NaN is missing, nothing else is screened. */
  static WireDepths depths(double[]... depthMm) {
    byte[][] screening = new byte[depthMm.length][depthMm[0].length];
    for (int wire = 0; wire < depthMm.length; wire++) {
      for (int row = 0; row < depthMm[wire].length; row++) {
        boolean missing = Double.isNaN(depthMm[wire][row]);
        screening[wire][row] = (byte) (missing ? Screening.MISSING : Screening.USED).ordinal();
      }
    }
    return new WireDepths(depthMm, screening, List.of());
  }

  /** The level of wires with these depths, minute by minute. */
  static LevelSeries levels(double[]... depthMm) {
    return levels(Notebook.EMPTY, sheet(depthMm.length), depthMm);
  }

  static LevelSeries levels(Notebook notebook, StationSheet sheet, double[]... depthMm) {
    SeasonRecord record = record(MINUTE_MS, depthMm);
    ConvertedWires converted = ConvertedWires.of(record, sheet, Progress.NONE);
    return WireCombiner.combine(converted, depths(depthMm), notebook, Progress.NONE);
  }

  static Notebook notebook(Entry... entries) {
    return new Notebook(List.of(entries), List.of());
  }

  static Entry visit(long fromMinute, long toMinute) {
    return new Entry.ServiceVisit(
        HEADER,
        minutes(fromMinute, toMinute),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  static Entry bad(long fromMinute, long toMinute, String... wires) {
    return new Entry.BadInterval(
        HEADER, minutes(fromMinute, toMinute), Set.of(wires), BadReason.WIRE_FAULT);
  }

  static Interval minutes(long from, long to) {
    return Interval.of(START.plusMillis(from * MINUTE_MS), START.plusMillis(to * MINUTE_MS));
  }
}
