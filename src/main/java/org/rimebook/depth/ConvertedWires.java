package org.rimebook.depth;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;

/**
 * The logged frequencies of a season as depths, each wire by its dated calibration, before the
 * notebook is heard. Made once for a record and its sheet.
 */
public final class ConvertedWires {

  private final SeasonRecord record;
  private final StationSheet sheet;
  private final List<ConvertedWire> wires;
  private final Sampling sampling;

  private ConvertedWires(SeasonRecord record, StationSheet sheet, List<ConvertedWire> wires) {
    this.record = record;
    this.sheet = sheet;
    this.wires = wires;
    this.sampling = new Sampling(record);
  }

  /**
   * Converts the wires of a record.
   *
   * @param record the readings
   * @param sheet the station sheet, its calibrations accepted by {@link CalibrationCheck}
   * @param progress hears of it
   */
  public static ConvertedWires of(SeasonRecord record, StationSheet sheet, Progress progress) {
    double hertzPerUnit = sheet.layout().hertzPerUnit();
    DepthRange range = DepthRange.of(sheet.gauge());
    int count = sheet.wires().size();
    Optional<double[]> above = StatedTemperature.above(record, sheet);
    List<ConvertedWire> wires =
        IntStream.range(0, count)
            .parallel()
            .mapToObj(
                wire -> {
                  progress.step("converting frequencies to depths", wire / (double) count);
                  return new ConvertedWire(
                      record.frequency(wire),
                      hertzPerUnit,
                      CalibrationSpans.of(sheet.wires().get(wire), record),
                      range,
                      StatedTemperature.of(sheet.wires().get(wire), above));
                })
            .toList();
    return new ConvertedWires(record, sheet, wires);
  }

  /** The readings. */
  public SeasonRecord record() {
    return record;
  }

  /** The station sheet. */
  public StationSheet sheet() {
    return sheet;
  }

  List<ConvertedWire> wires() {
    return wires;
  }

  /** The sampling interval at each row. */
  Sampling sampling() {
    return sampling;
  }
}
