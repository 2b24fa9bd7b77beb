package org.rimebook.upkeep;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.depth.Robust;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/**
 * What a wire does in a few minutes at rest.
 *
 * @param wire its name
 * @param readings number of readings
 * @param frequencyHz median frequency [Hz]
 * @param depthMm depth at that [mm]
 * @param noiseMm scatter of a reading, from differences of readings that follow each other [mm]
 * @param repeatMm median of the second half less that of the first [mm]
 */
public record AtRest(
    String wire,
    int readings,
    double frequencyHz,
    double depthMm,
    double noiseMm,
    double repeatMm) {

  /** Fewer readings tell nothing. */
  static final int LEAST_READINGS = 6;

  /**
   * What a wire did.
   *
   * @param season the season; its notebook isn't heard
   * @param wire number of the wire
   * @param at the time
   * @throws IllegalArgumentException in words with too few readings
   */
  static AtRest of(Season season, int wire, Interval at) {
    SeasonRecord record = season.record();
    Wire of = season.sheet().wires().get(wire);
    CalibrationCurve curve = CalibrationCurve.of(of.calibrationAt(at.fromMs()));
    double[] hz = values(record, record.frequency(wire), at);
    if (hz.length < LEAST_READINGS) {
      throw new IllegalArgumentException(
          "wire " + of.name() + " gave " + hz.length + " readings in that time, and 6 are needed");
    }
    double[] mm = Arrays.stream(hz).map(curve::depthMm).toArray();
    int half = mm.length / 2;
    double first = median(Arrays.copyOfRange(mm, 0, half));
    double second = median(Arrays.copyOfRange(mm, mm.length - half, mm.length));
    double medianHz = median(hz);
    return new AtRest(
        of.name(), hz.length, medianHz, curve.depthMm(medianHz), noiseMm(mm), second - first);
  }

  /** Depths of a wire in a time [mm]. */
  static double[] depthsMm(Season season, int wire, Interval at) {
    CalibrationCurve curve =
        CalibrationCurve.of(season.sheet().wires().get(wire).calibrationAt(at.fromMs()));
    double[] hz = values(season.record(), season.record().frequency(wire), at);
    return Arrays.stream(hz).map(curve::depthMm).toArray();
  }

  /** Scatter of a reading, from differences of readings that follow each other [mm]. */
  static double noiseMm(double[] mm) {
    double[] steps = new double[mm.length - 1];
    Arrays.setAll(steps, i -> Math.abs(mm[i + 1] - mm[i]));
    return Robust.sdFromMagnitudesInPlace(steps, steps.length) / Math.sqrt(2);
  }

  /** Mean wind in that time [m/s]; empty when it isn't measured. */
  static OptionalDouble windMs(Season season, Interval at) {
    return season
        .sheet()
        .channelIndex(Channel.WIND_SPEED)
        .map(season.record()::channel)
        .map(column -> Arrays.stream(values(season.record(), column, at)).average())
        .orElse(OptionalDouble.empty());
  }

  private static double[] values(SeasonRecord record, Column column, Interval at) {
    double[] values = new double[record.size()];
    int count = 0;
    for (int row = record.firstRowAtOrAfter(at.fromMs());
        row < record.size() && record.stampMs(row) < at.toMs();
        row++) {
      if (Double.isFinite(column.get(row))) {
        values[count++] = column.get(row);
      }
    }
    return Arrays.copyOf(values, count);
  }

  private static double median(double[] values) {
    return Robust.medianInPlace(values.clone(), values.length);
  }
}
