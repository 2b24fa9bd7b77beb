package org.rimebook.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.export.keep.DatedRemark;
import org.rimebook.export.keep.SheetChange;
import org.rimebook.export.leaflet.CalibrationLeaflet;
import org.rimebook.export.leaflet.Leaflet;
import org.rimebook.season.Season;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;
import org.rimebook.upkeep.LoadReading;
import org.rimebook.upkeep.StoredWords;
import org.rimebook.upkeep.Weighing;
import org.rimebook.upkeep.WeightFit;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Fits a wire's calibration to check weights and compares it with its sheet. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Fit a wire's calibration to check weights, compare it with its sheet, and say whether the"
            + " wire needs a new one. With one or two masses the wire is only checked.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook calibrate my-gauge-2024-25 --wire north --load 0=1050.1 --load 2=1526.4 \\",
      "      --load 4=1885.5 --load 6=2186.2 --load 8=2450.2",
      "  rimebook calibrate my-gauge-2024-25 --wire north --load 0=1050.1 --water 2=1526.1 \\",
      "      --water-temperature 12",
      "  rimebook calibrate my-gauge-2024-25 --wire north --load 0=1050.1 --load 2=1526.4 \\",
      "      --load 4=1885.5 --load 6=2186.2 --valid-from 2025-06-01T12:00 --by ab"
    })
final class CalibrateCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(names = "--wire", required = true, paramLabel = "NAME", description = "The wire.")
  private String wire;

  @Option(
      names = "--load",
      paramLabel = "KG=HZ",
      converter = PairConverter.class,
      description =
          "Mass on the wires and the frequency read; again for each. 0 is the empty bucket.")
  private List<Pair> loads = new ArrayList<>();

  @Option(
      names = "--water",
      paramLabel = "L=HZ",
      converter = PairConverter.class,
      description = "Litres of water in the bucket and the frequency read; again for each.")
  private List<Pair> waters = new ArrayList<>();

  @Option(
      names = "--water-temperature",
      paramLabel = "DEGC",
      defaultValue = "15",
      description = "Temperature of that water; ${DEFAULT-VALUE} °C when not given.")
  private double waterDegC;

  @Option(
      names = "--f0",
      paramLabel = "HZ",
      description = "Frequency under the empty bucket; the mean of the loads of 0 when not given.")
  private Optional<Double> f0Hz;

  @Option(
      names = "--sheet-at",
      paramLabel = "TIME",
      description = "Which calibration of the sheet to compare with; the last when not given.")
  private Optional<OffsetDateTime> sheetAt;

  @Option(
      names = "--valid-from",
      paramLabel = "TIME",
      converter = WhyCommand.TimeConverter.class,
      description =
          "With --by: since when the fitted calibration holds. It is added to the wire in"
              + " station.json; those before it stay.")
  private Optional<TemporalAccessor> validFrom;

  @Mixin private StoreOptions store;

  @Mixin private LeafletOutput output;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    StationSheet sheet = Season.open(season).sheet();
    Wire of =
        sheet.wires().stream()
            .filter(each -> each.name().equals(wire))
            .findFirst()
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "the sheet has no wire \""
                            + wire
                            + "\"; it has "
                            + sheet.wires().stream().map(Wire::name).toList()));
    Calibration calibration =
        sheetAt
            .map(at -> of.calibrationAt(at.toInstant().toEpochMilli()))
            .orElse(of.calibrations().get(of.calibrations().size() - 1));
    try {
      return output.put(leaflet(sheet, CalibrationCurve.of(calibration)));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }

  private Leaflet leaflet(StationSheet sheet, CalibrationCurve curve) throws InputException {
    List<LoadReading> readings = readings();
    if (readings.stream().noneMatch(reading -> reading.massKg() > 0)) {
      throw new IllegalArgumentException("give at least one weight with --load or --water");
    }
    Weighing weighing =
        new Weighing(
            readings,
            f0Hz.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
            sheet.gauge().orificeAreaCm2());
    if (store.writer().isPresent()) {
      Optional<WeightFit> fit = weighing.fit();
      if (fit.isPresent()) {
        store(sheet, fit.get(), store.writer().get());
      } else {
        remark(sheet, StoredWords.checked(wire, weighing.checks(curve)), store.writer().get());
      }
    }
    return CalibrationLeaflet.of(wire, weighing, curve, sheet.name());
  }

  private List<LoadReading> readings() {
    List<LoadReading> readings = new ArrayList<>();
    loads.forEach(pair -> readings.add(new LoadReading(pair.load(), pair.hz())));
    waters.forEach(pair -> readings.add(LoadReading.ofWater(pair.load(), waterDegC, pair.hz())));
    return readings;
  }

  private void store(StationSheet sheet, WeightFit fit, DatedRemark.Writer writer)
      throws InputException {
    if (validFrom.isEmpty()) {
      throw new IllegalArgumentException(
          "say with --valid-from since when the calibration holds, so that it can be stored");
    }
    Instant from = Instant.ofEpochMilli(StationInstant.of(validFrom.get(), sheet));
    Calibration fitted = fit.calibration(Optional.of(from));
    SheetChange.addCalibration(season, wire, fitted);
    remark(sheet, StoredWords.calibration(wire, fitted, sheet.utcOffset()), writer);
  }

  private void remark(StationSheet sheet, String note, DatedRemark.Writer writer)
      throws InputException {
    DatedRemark.append(season, sheet, Optional.empty(), note, writer);
    spec.commandLine().getOut().println("stored: " + note);
  }

  /**
   * A load and the frequency under it.
   *
   * @param load in the option's unit
   * @param hz frequency [Hz]
   */
  record Pair(double load, double hz) {}

  /** Reads {@code LOAD=HZ}. */
  static final class PairConverter implements ITypeConverter<Pair> {
    @Override
    public Pair convert(String text) {
      String[] parts = text.split("=", 2);
      try {
        return new Pair(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
      } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
        throw new TypeConversionException("use LOAD=HZ as in 2.000=1526.4, not '" + text + "'");
      }
    }
  }
}
