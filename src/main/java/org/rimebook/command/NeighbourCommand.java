package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.export.OutputFolder;
import org.rimebook.export.SeasonExport;
import org.rimebook.export.figure.FigureFile;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.export.neighbour.ComparisonText;
import org.rimebook.export.neighbour.DoubleMassFigure;
import org.rimebook.export.neighbour.Neighbours;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.neighbour.Comparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares a season's daily totals with those of neighbouring stations. */
@Command(
    name = "neighbour",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = {
      "Compare the daily totals of a season with those of neighbouring stations: ratio, double-mass"
          + " curve with a test for a break in its slope, months.",
      "A neighbour's table has the columns start, end and catch_mm, as daily.csv does; days are"
          + " matched by start and end."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook neighbour my-gauge-2024-25 --with valley/daily.csv",
      "  rimebook neighbour my-gauge-2024-25 --with a/daily.csv --with b/daily.csv --out double-mass"
    })
final class NeighbourCommand implements Callable<Integer> {

  private static final double SIDE_PT = 360;

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--with",
      required = true,
      paramLabel = "FILE",
      description = "Daily table of a neighbour; when given again, their mean counts.")
  private List<Path> tables;

  @Option(names = "--json", description = "As JSON.")
  private boolean json;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Also write double-mass.csv and double-mass.svg into this folder.")
  private Optional<Path> out;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    Neighbours neighbours;
    try {
      neighbours = Neighbours.read(tables);
    } catch (InputException e) {
      RimebookCommand.printProblems(spec.commandLine().getErr(), e);
      return ExitCode.NOT_MADE;
    } catch (IOException e) {
      return refused(e.getMessage());
    }
    Season opened = Season.open(season);
    if (out.isPresent() && SeasonExport.amongTheRecord(opened, season, out.get())) {
      refused(out.get() + ": holds logger files of the season. Name another folder with --out");
      return ExitCode.WRONG_USE;
    }
    return compare(SeasonResult.of(opened), neighbours);
  }

  private int compare(SeasonResult result, Neighbours neighbours) {
    StationSheet sheet = result.season().sheet();
    Comparison comparison = neighbours.against(result);
    ComparisonText text =
        new ComparisonText(sheet.name(), neighbours.names(), comparison, sheet.utcOffset());
    if (out.isPresent()) {
      Map<String, byte[]> files = new LinkedHashMap<>();
      SeasonFigure figure = DoubleMassFigure.of(sheet.name(), comparison, SIDE_PT);
      files.put("double-mass.csv", text.curve().getBytes(StandardCharsets.UTF_8));
      files.put("double-mass.svg", FigureFile.svg(figure));
      try {
        OutputFolder.write(out.get(), files);
      } catch (IOException e) {
        return refused(
            out.get()
                + ": can't be written to ("
                + FileFault.words(e, out.get())
                + "). Name another folder");
      }
    }
    PrintWriter print = spec.commandLine().getOut();
    if (json) {
      print.print(text.json());
    } else {
      text.lines().forEach(print::println);
    }
    print.flush();
    return comparison.pairs().isEmpty() ? ExitCode.NOT_MADE : ExitCode.DONE;
  }

  private int refused(String words) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("rimebook: " + words);
    err.flush();
    return ExitCode.NOT_MADE;
  }
}
