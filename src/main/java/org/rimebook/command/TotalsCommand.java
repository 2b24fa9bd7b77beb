package org.rimebook.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Writes the hourly and daily totals of a season. */
@Command(
    name = "totals",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = "Write the hourly and daily totals of a season, and its report.",
    footerHeading = "%nExample:%n",
    footer = {"  rimebook totals my-gauge-2024-25 --out tables --resolution 0.01"})
final class TotalsCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write into; made when absent.")
  private Path out;

  @Option(
      names = "--resolution",
      paramLabel = "MM",
      defaultValue = "0.1",
      converter = ResolutionConverter.class,
      description = "Smallest step of a printed total: 0.1 (default) or 0.01 mm.")
  private Resolution resolution;

  @Option(names = "--no-report", description = "Tables only, without report.pdf.")
  private boolean noReport;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    return new TotalsRun(season, out, resolution, !noReport)
        .run(spec.commandLine().getOut(), spec.commandLine().getErr());
  }

  /** Reads a resolution. */
  static final class ResolutionConverter implements ITypeConverter<Resolution> {
    @Override
    public Resolution convert(String text) {
      return Resolution.of(text)
          .orElseThrow(() -> new TypeConversionException("use 0.1 or 0.01, not '" + text + "'"));
    }
  }
}
