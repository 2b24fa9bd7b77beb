package org.rimebook.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
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

/** Explains one total. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Explain one hourly or daily total: readings, wires, noise, drift, entries, uncertainty.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook why my-gauge-2024-25 --at 2025-01-15T10:00-07:00",
      "  rimebook why my-gauge-2024-25 --at 2025-01-15 --day"
    })
final class WhyCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--at",
      required = true,
      paramLabel = "TIME",
      converter = TimeConverter.class,
      description =
          "An instant inside the hour or day, ISO 8601; station time without an offset; a date"
              + " alone is the start of its climatological day.")
  private TemporalAccessor at;

  @Option(names = "--day", description = "Explain the climatological day, not the hour.")
  private boolean day;

  @Option(
      names = "--resolution",
      paramLabel = "MM",
      defaultValue = "0.1",
      converter = TotalsCommand.ResolutionConverter.class,
      description = "Smallest step of a printed total: 0.1 (default) or 0.01 mm.")
  private Resolution resolution;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    return new WhyRun(season, at, day, resolution)
        .run(spec.commandLine().getOut(), spec.commandLine().getErr());
  }

  /** Reads an instant, a time or a date. */
  static final class TimeConverter implements ITypeConverter<TemporalAccessor> {

    private static final DateTimeFormatter FORMAT =
        new DateTimeFormatterBuilder()
            .append(DateTimeFormatter.ISO_LOCAL_DATE)
            .optionalStart()
            .appendLiteral('T')
            .append(DateTimeFormatter.ISO_LOCAL_TIME)
            .optionalStart()
            .appendOffsetId()
            .toFormatter(Locale.ROOT);

    @Override
    public TemporalAccessor convert(String text) {
      try {
        return FORMAT.parseBest(text, OffsetDateTime::from, LocalDateTime::from, LocalDate::from);
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "use a time like 2025-01-15T10:00-07:00, not '" + text + "'");
      }
    }
  }
}
