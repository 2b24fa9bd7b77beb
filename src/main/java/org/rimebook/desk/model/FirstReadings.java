package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.record.RecordPreview;

/**
 * The first readings of a record on the calibrations entered so far.
 *
 * @param times their times as the file has them; empty texts without a column of times
 * @param wires of each wire in turn
 */
public record FirstReadings(List<String> times, List<OfWire> wires) {

  public FirstReadings {
    times = List.copyOf(times);
    wires = List.copyOf(wires);
  }

  /**
   * The readings of one wire.
   *
   * @param name its name
   * @param frequenciesHz by reading [Hz]; empty where there is none
   * @param curve its curve; empty until A, B and f0 are entered
   */
  public record OfWire(
      String name, List<OptionalDouble> frequenciesHz, Optional<CalibrationCurve> curve) {
    public OfWire {
      frequenciesHz = List.copyOf(frequenciesHz);
    }

    private OptionalDouble depthMm(int row) {
      OptionalDouble hz = frequenciesHz.get(row);
      return hz.isPresent() && curve.isPresent()
          ? OptionalDouble.of(curve.get().depthMm(hz.getAsDouble()))
          : OptionalDouble.empty();
    }
  }

  /** The first readings of a draft. */
  public static FirstReadings of(SeasonDraft draft) {
    RecordPreview preview = draft.source().preview();
    int time =
        IntStream.range(0, draft.columns().size())
            .filter(column -> draft.columns().get(column).role() == ColumnRole.TIME)
            .findFirst()
            .orElse(-1);
    List<String> times = new ArrayList<>();
    for (List<String> row : preview.rows()) {
      times.add(time >= 0 && time < row.size() ? row.get(time) : "");
    }
    return new FirstReadings(
        times, draft.wires().stream().map(wire -> ofWire(draft, wire)).toList());
  }

  private static OfWire ofWire(SeasonDraft draft, WireDraft wire) {
    RecordPreview preview = draft.source().preview();
    int column = draft.column(wire.column());
    double gateS = draft.number(StationField.GATE).orElse(1);
    List<OptionalDouble> frequenciesHz = new ArrayList<>();
    for (int row = 0; row < preview.rows().size(); row++) {
      OptionalDouble logged = preview.number(row, column);
      frequenciesHz.add(
          logged.isPresent() ? OptionalDouble.of(logged.getAsDouble() / gateS) : logged);
    }
    return new OfWire(
        wire.text(WireField.NAME), frequenciesHz, wire.calibration().map(CalibrationCurve::of));
  }

  /** Depth [mm] of a wire at a reading; empty without a reading or calibration. */
  public OptionalDouble depthMm(int row, int wire) {
    return wires.get(wire).depthMm(row);
  }

  /** How far the deepest wire lies from the shallowest at a reading [mm]; empty below two wires. */
  public OptionalDouble spreadMm(int row) {
    double[] depths =
        wires.stream()
            .map(wire -> wire.depthMm(row))
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .sorted()
            .toArray();
    return depths.length < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(depths[depths.length - 1] - depths[0]);
  }

  /** The first reading a wire has a depth at. */
  OptionalInt firstRead(int wire) {
    return IntStream.range(0, times.size())
        .filter(row -> depthMm(row, wire).isPresent())
        .findFirst();
  }
}
