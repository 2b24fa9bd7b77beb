package org.rimebook.export.keep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.rimebook.export.OutputFolder;
import org.rimebook.season.Season;
import org.rimebook.season.Utf8;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.StationSheet;
import org.rimebook.station.StationSheetReader;
import org.rimebook.station.StationSheetWriter;
import org.rimebook.station.Wire;

/**
 * Writes facts into the station sheet of a season folder. The sheet is read anew each time, what
 * this version doesn't know in it is kept, and the file is there whole or as it was.
 */
public final class SheetChange {

  private static final String FILE = Season.STATION_FILE;

  private SheetChange() {}

  /**
   * Adds a calibration to a wire. Those before it stay, each for its time.
   *
   * @param folder the season folder
   * @param wire name of the wire
   * @param calibration the calibration, later than all the wire has
   * @throws InputException when there is no such wire, it has a calibration as late, or the sheet
   *     can't be read or written
   */
  public static void addCalibration(Path folder, String wire, Calibration calibration)
      throws InputException {
    change(
        folder,
        List.of(wire),
        own -> {
          List<Calibration> all = new ArrayList<>(own.calibrations());
          Optional<Instant> last = all.get(all.size() - 1).from();
          boolean later =
              calibration.from().isPresent()
                  && (last.isEmpty() || calibration.from().get().isAfter(last.get()));
          if (!later) {
            throw new Refused(
                "wire \""
                    + wire
                    + "\" has a calibration from "
                    + last.map(Instant::toString).orElse("the start")
                    + " on",
                "Give a later time, or write one between others into the file by hand");
          }
          all.add(calibration);
          return new Wire(
              own.name(), own.frequencyColumn(), own.lead(), all, own.temperaturePerDegC());
        });
  }

  /**
   * States what the temperature does to wires, or no longer does.
   *
   * @param folder the season folder
   * @param wires names of the wires
   * @param perDegC share of the depth their readings move a degree [1/°C]; 0 to take nothing off;
   *     empty to have it learnt
   * @throws InputException when there is no such wire, the number can't be, or the sheet can't be
   *     read or written
   */
  public static void stateTemperature(Path folder, List<String> wires, OptionalDouble perDegC)
      throws InputException {
    if (perDegC.isPresent() && !(Math.abs(perDegC.getAsDouble()) <= Wire.MOST_PER_DEG_C)) {
      throw new InputException(
          Problem.inFile(
              FILE,
              "can't state " + perDegC.getAsDouble() + " per °C",
              "Between -" + Wire.MOST_PER_DEG_C + " and " + Wire.MOST_PER_DEG_C + " is believed"));
    }
    change(
        folder,
        wires,
        own ->
            new Wire(own.name(), own.frequencyColumn(), own.lead(), own.calibrations(), perDegC));
  }

  /** Why a change isn't made. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String remedy;

    Refused(String words, String remedy) {
      super(words);
      this.remedy = remedy;
    }
  }

  private static void change(Path folder, List<String> changed, UnaryOperator<Wire> to)
      throws InputException {
    Path file = folder.resolve(FILE);
    try {
      String text = Utf8.text(Files.readAllBytes(file), FILE);
      StationSheet sheet = StationSheetReader.read(text, FILE).sheet();
      List<Wire> wires = new ArrayList<>(sheet.wires());
      List<String> names = wires.stream().map(Wire::name).toList();
      for (String wire : changed) {
        if (!names.contains(wire)) {
          throw new Refused("has no wire \"" + wire + "\"", "It has " + String.join(", ", names));
        }
        wires.set(names.indexOf(wire), to.apply(wires.get(names.indexOf(wire))));
      }
      String written = StationSheetWriter.write(sheet.withWires(wires), Optional.of(text));
      StationSheetReader.read(written, FILE);
      OutputFolder.write(file, Utf8.bytes(written));
    } catch (Refused e) {
      throw new InputException(Problem.inFile(FILE, e.getMessage(), e.remedy));
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              file.toString(),
              "can't be changed (" + e.getMessage() + ")",
              "See that it is there and may be written; it is as it was"));
    }
  }
}
