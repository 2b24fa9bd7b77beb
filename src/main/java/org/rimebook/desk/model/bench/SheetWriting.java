package org.rimebook.desk.model.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.rimebook.export.keep.SheetChange;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;

/** A fact that goes into the station sheet. */
public sealed interface SheetWriting {

  /**
   * Writes it.
   *
   * @param seasonFolder the season folder
   * @throws InputException when the sheet can't be changed
   */
  void write(Path seasonFolder) throws InputException;

  /** Whether a sheet has it. */
  boolean in(StationSheet sheet);

  /**
   * A calibration added to a wire.
   *
   * @param wire name of the wire
   * @param calibration the calibration, with the instant from which it holds
   */
  record Added(String wire, Calibration calibration) implements SheetWriting {
    @Override
    public void write(Path seasonFolder) throws InputException {
      SheetChange.addCalibration(seasonFolder, wire, calibration);
    }

    @Override
    public boolean in(StationSheet sheet) {
      return sheet.wires().stream()
          .anyMatch(w -> w.name().equals(wire) && w.calibrations().contains(calibration));
    }
  }

  /**
   * What the temperature does to wires, stated or to be learnt again.
   *
   * @param wires names of the wires
   * @param perDegC share of the depth a degree [1/°C]; empty to have it learnt
   */
  record Stated(List<String> wires, OptionalDouble perDegC) implements SheetWriting {

    public Stated {
      wires = List.copyOf(wires);
    }

    @Override
    public void write(Path seasonFolder) throws InputException {
      SheetChange.stateTemperature(seasonFolder, wires, perDegC);
    }

    @Override
    public boolean in(StationSheet sheet) {
      return sheet.wires().stream()
          .filter(wire -> wires.contains(wire.name()))
          .allMatch(wire -> wire.temperaturePerDegC().equals(perDegC));
    }
  }
}
