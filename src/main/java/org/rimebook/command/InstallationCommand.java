package org.rimebook.command;

import java.nio.file.Path;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.export.keep.DatedRemark;
import org.rimebook.export.leaflet.InstallationLeaflet;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.upkeep.InstallationCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a gauge just set up by a few minutes of its readings. */
@Command(
    name = "installation",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Check a gauge just set up, or looked after, by a few minutes of readings at rest: depth,"
            + " agreement, repetition and noise of the wires.",
    footerHeading = "%nExample:%n",
    footer = {
      "  rimebook installation my-gauge-2024-25 --from 2024-10-01T12:00 --to 2024-10-01T12:15 \\",
      "      --taps 2024-10-01T12:16 2024-10-01T12:18 --by ab --pdf installation.pdf"
    })
final class InstallationCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--from",
      required = true,
      paramLabel = "TIME",
      converter = WhyCommand.TimeConverter.class,
      description = "Start of the time at rest, ISO 8601; station time without an offset.")
  private TemporalAccessor from;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "TIME",
      converter = WhyCommand.TimeConverter.class,
      description = "Its end.")
  private TemporalAccessor to;

  @Option(
      names = "--expected-mm",
      paramLabel = "MM",
      defaultValue = "0",
      description = "Depth of what is in the bucket; 0 for an empty one.")
  private double expectedMm;

  @Option(
      names = "--taps",
      paramLabel = "TIME",
      arity = "2",
      converter = WhyCommand.TimeConverter.class,
      description =
          "When the rim was tapped beside each wire, start and end, after the time at rest; readings"
              + " as long as that are needed after it too.")
  private List<TemporalAccessor> taps = List.of();

  @Mixin private StoreOptions store;

  @Mixin private LeafletOutput output;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    Season opened = Season.open(season);
    try {
      Interval at =
          new Interval(
              StationInstant.of(from, opened.sheet()), StationInstant.of(to, opened.sheet()));
      Optional<Interval> tapped =
          taps.isEmpty()
              ? Optional.empty()
              : Optional.of(
                  new Interval(
                      StationInstant.of(taps.get(0), opened.sheet()),
                      StationInstant.of(taps.get(1), opened.sheet())));
      InstallationCheck check = InstallationCheck.of(opened, at, expectedMm, tapped);
      if (store.writer().isPresent()) {
        DatedRemark.append(
            season, opened.sheet(), Optional.of(at), check.words(), store.writer().get());
      }
      return output.put(InstallationLeaflet.of(check, opened.sheet()));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }
}
