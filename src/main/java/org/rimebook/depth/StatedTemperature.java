package org.rimebook.depth;

import java.util.Optional;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * What the air temperature does to the readings of a wire, as its sheet states it: a share of the
 * depth for each degree above the one depths are right at (Lamb, Persaud and Mouradian 2009, whose
 * wires read about 0.004 % less a degree). Where the sheet states none, nothing is taken off here.
 *
 * @param perDegC the coefficient [1/°C]
 * @param aboveDegC air temperature above that of calibration, row by row [°C]; empty to take
 *     nothing off
 */
record StatedTemperature(double perDegC, double[] aboveDegC) {

  private static final StatedTemperature NONE = new StatedTemperature(0, new double[0]);

  /** The air temperature a sheet needs for what it states; empty when it states nothing. */
  static Optional<double[]> above(SeasonRecord record, StationSheet sheet) {
    boolean stated = sheet.wires().stream().anyMatch(StatedTemperature::matters);
    return stated ? AirTemperature.aboveCalibrated(record, sheet) : Optional.empty();
  }

  /** What is stated for a wire. */
  static StatedTemperature of(Wire wire, Optional<double[]> aboveDegC) {
    return matters(wire) && aboveDegC.isPresent()
        ? new StatedTemperature(wire.temperaturePerDegC().orElse(0), aboveDegC.get())
        : NONE;
  }

  private static boolean matters(Wire wire) {
    return wire.temperaturePerDegC().orElse(0) != 0;
  }

  /** A depth without what the temperature of its row did [mm]. */
  double takenOff(double depthMm, int row) {
    return aboveDegC.length == 0 ? depthMm : depthMm / (1 + perDegC * aboveDegC[row]);
  }
}
