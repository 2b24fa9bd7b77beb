package org.rimebook.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;
import org.rimebook.upkeep.BucketNow;
import org.rimebook.upkeep.CatchRates;
import org.rimebook.upkeep.Outlook;
import org.rimebook.upkeep.Plan;
import org.rimebook.upkeep.Poured;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans the next visit. */
@Command(
    name = "next-visit",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Say when the bucket overflows or freezes at the season's own rates, the latest date of the"
            + " next visit, and the litres to bring.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook next-visit my-gauge-2024-25 --antifreeze propylene-glycol --coldest -25",
      "  rimebook next-visit my-gauge-2024-25 --antifreeze methanol --coldest -20 --days 90"
    })
final class NextVisitCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Mixin private PouredOptions poured;

  @Option(
      names = "--coldest",
      required = true,
      paramLabel = "DEGC",
      description = "Coldest air expected before the bucket is next emptied.")
  private double coldestDegC;

  @Option(
      names = "--margin",
      paramLabel = "DEGC",
      defaultValue = "" + Plan.USUAL_MARGIN_DEG_C,
      description = "How much lower the mixture has to freeze; ${DEFAULT-VALUE} when not given.")
  private double marginDegC;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "120",
      description = "Days the next charge has to last; ${DEFAULT-VALUE} when not given.")
  private int days;

  @Option(
      names = "--antifreeze-l",
      paramLabel = "L",
      defaultValue = "0",
      description =
          "Litres in the bucket when the record begins; counts when no visit of the notebook empties"
              + " it.")
  private double antifreezeL;

  @Option(
      names = "--wet-rate",
      paramLabel = "MM_PER_DAY",
      description = "Plan with this rate instead of the season's own.")
  private Optional<Double> wetRate;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    Poured like = poured.poured(antifreezeL);
    SeasonResult result = SeasonResult.of(Season.open(season));
    try {
      BucketNow now = BucketNow.of(result.stage(), like);
      CatchRates rates =
          wetRate.isPresent()
              ? CatchRates.given(wetRate.get())
              : CatchRates.of(result.totals(Resolution.HUNDREDTH));
      Plan plan = new Plan(coldestDegC, marginDegC, days);
      Outlook outlook =
          Outlook.of(now, rates, like.antifreeze(), plan, result.season().sheet().gauge());
      UpkeepLines.outlook(outlook, rates, like, result)
          .forEach(spec.commandLine().getOut()::println);
      spec.commandLine().getOut().flush();
      return ExitCode.DONE;
    } catch (IllegalArgumentException e) {
      spec.commandLine().getErr().println("rimebook: " + season + ": " + e.getMessage());
      spec.commandLine().getErr().flush();
      return ExitCode.NOT_MADE;
    }
  }
}
