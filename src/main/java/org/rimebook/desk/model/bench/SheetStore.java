package org.rimebook.desk.model.bench;

import java.nio.file.Path;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;

/** Writes calibrations into a station sheet. */
@FunctionalInterface
public interface SheetStore {

  /**
   * Adds a calibration to a wire.
   *
   * @param seasonFolder the season folder
   * @param wireName name of the wire, as in the sheet
   * @param calibration the calibration, with the instant from which it holds
   * @throws InputException when the sheet can't be changed; it is left as it was
   */
  void addCalibration(Path seasonFolder, String wireName, Calibration calibration)
      throws InputException;
}
