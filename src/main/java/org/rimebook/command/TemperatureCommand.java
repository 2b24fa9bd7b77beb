package org.rimebook.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.rimebook.export.keep.DatedRemark;
import org.rimebook.export.keep.SheetChange;
import org.rimebook.export.leaflet.TemperatureLeaflet;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;
import org.rimebook.upkeep.StoredWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Shows, replaces and switches off what is taken off for the air temperature. */
@Command(
    name = "temperature",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Show what the air temperature does to each wire, as learnt from dry spells; state it by"
            + " hand instead, or take nothing off.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook temperature my-gauge-2024-25",
      "  rimebook temperature my-gauge-2024-25 --wire north --state -38e-6 --by ab",
      "  rimebook temperature my-gauge-2024-25 --state off --by ab"
    })
final class TemperatureCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--state",
      paramLabel = "PER_DEGC",
      converter = StatedConverter.class,
      description =
          "Share of the depth a reading moves a °C, to be taken off from now on; off takes nothing"
              + " off, learnt has it learnt again.")
  private Optional<Stated> stated;

  @Option(
      names = "--wire",
      paramLabel = "NAME",
      description = "The wire that is stated for; all when not given.")
  private Optional<String> wire;

  @Mixin private StoreOptions store;

  @Mixin private LeafletOutput output;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    if (stated.isPresent()) {
      DatedRemark.Writer writer =
          store
              .writer()
              .orElseThrow(
                  () ->
                      new ParameterException(
                          spec.commandLine(),
                          "--state changes the station sheet: say who does it with --by INITIALS"));
      state(stated.get().perDegC(), writer);
    } else if (store.writer().isPresent() || wire.isPresent()) {
      throw new ParameterException(
          spec.commandLine(), "--wire and --by go with --state, which says what to store");
    }
    return output.put(TemperatureLeaflet.of(SeasonResult.of(Season.open(season))));
  }

  private void state(OptionalDouble perDegC, DatedRemark.Writer writer) throws InputException {
    StationSheet sheet = Season.outline(season).sheet();
    List<String> wires = wire.map(List::of).orElse(sheet.wires().stream().map(Wire::name).toList());
    SheetChange.stateTemperature(season, wires, perDegC);
    String note = StoredWords.temperature(wires, perDegC);
    DatedRemark.append(season, sheet, Optional.empty(), note, writer);
    spec.commandLine().getOut().println("stored: " + note);
  }

  /**
   * What is stated.
   *
   * @param perDegC share of the depth a degree [1/°C]; empty to have it learnt
   */
  record Stated(OptionalDouble perDegC) {}

  /** Reads a number, {@code off} or {@code learnt}. */
  static final class StatedConverter implements ITypeConverter<Stated> {
    @Override
    public Stated convert(String given) {
      String word = given.toLowerCase(Locale.ROOT);
      if (word.equals("off") || word.equals("learnt")) {
        return new Stated(word.equals("off") ? OptionalDouble.of(0) : OptionalDouble.empty());
      }
      try {
        return new Stated(OptionalDouble.of(Double.parseDouble(given)));
      } catch (NumberFormatException e) {
        throw new TypeConversionException(
            "use a number as -38e-6, off or learnt, not '" + given + "'");
      }
    }
  }
}
