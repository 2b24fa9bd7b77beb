package org.rimebook.command;

import java.nio.file.Path;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.export.figure.FigureFile;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.station.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Writes a view of a season as a figure for a paper. */
@Command(
    name = "figure",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = "Write a view of a season as a figure: SVG, PDF or PNG.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook figure my-gauge-2024-25 --out season.svg",
      "  rimebook figure my-gauge-2024-25 --out storm.pdf --from 2025-01-15 --to 2025-01-18"
          + " --show depth,hourly,wind",
      "  rimebook figure my-gauge-2024-25 --out slide.png --width-mm 240 --height-mm 135 --dpi 150"
    })
final class FigureCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "File to write; its ending, .svg, .pdf or .png, says as what.")
  private Path out;

  @Option(
      names = "--from",
      paramLabel = "TIME",
      converter = WhyCommand.TimeConverter.class,
      description =
          "Where it starts, ISO 8601; station time without an offset; a date alone is the start"
              + " of its climatological day. The start of the record when not given.")
  private TemporalAccessor from;

  @Option(
      names = "--to",
      paramLabel = "TIME",
      converter = WhyCommand.TimeConverter.class,
      description = "Where it ends, as for --from. The end of the record when not given.")
  private TemporalAccessor to;

  @Option(
      names = "--show",
      paramLabel = "STRIP",
      split = ",",
      defaultValue = "depth,catch,daily,weather",
      converter = StripConverter.class,
      completionCandidates = StripWords.class,
      description =
          "Strips from top to bottom, joined by commas, of: ${COMPLETION-CANDIDATES}."
              + " ${DEFAULT-VALUE} when not given.")
  private List<Strips> strips;

  @Option(
      names = "--width-mm",
      paramLabel = "MM",
      defaultValue = "170",
      description = "Width, ${DEFAULT-VALUE} mm when not given.")
  private double widthMm;

  @Option(
      names = "--height-mm",
      paramLabel = "MM",
      defaultValue = "150",
      description = "Height, ${DEFAULT-VALUE} mm when not given.")
  private double heightMm;

  @Option(
      names = "--dpi",
      paramLabel = "DOTS",
      defaultValue = "" + FigureFile.DPI,
      description = "Dots an inch of a PNG, ${DEFAULT-VALUE} when not given.")
  private int dpi;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    List<FigureStrip> shown = strips.stream().flatMap(s -> s.strips().stream()).toList();
    FigureRun.Size size = new FigureRun.Size(widthMm, heightMm, dpi);
    FigureRun.Ends ends = new FigureRun.Ends(Optional.ofNullable(from), Optional.ofNullable(to));
    return new FigureRun(season, out, shown, ends, size)
        .run(spec.commandLine().getOut(), spec.commandLine().getErr());
  }

  /**
   * The strips one word asks for.
   *
   * @param strips at least one
   */
  record Strips(List<FigureStrip> strips) {}

  /** Reads a word for strips. */
  static final class StripConverter implements ITypeConverter<Strips> {
    @Override
    public Strips convert(String text) {
      List<FigureStrip> named = FigureStrip.named(text.strip());
      if (named.isEmpty()) {
        throw new TypeConversionException(
            "'" + text + "' isn't a strip; use " + String.join(", ", FigureStrip.words()));
      }
      return new Strips(named);
    }
  }

  /** Every word for strips. */
  static final class StripWords extends ArrayList<String> {
    private static final long serialVersionUID = 1;

    StripWords() {
      super(FigureStrip.words());
    }
  }
}
