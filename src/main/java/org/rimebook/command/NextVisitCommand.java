package org.rimebook.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.export.leaflet.NextVisitLeaflet;
import org.rimebook.export.leaflet.OutlookParts;
import org.rimebook.export.leaflet.VisitSheet;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.Resolution;
import org.rimebook.upkeep.BucketNow;
import org.rimebook.upkeep.CatchRates;
import org.rimebook.upkeep.Outlook;
import org.rimebook.upkeep.Plan;
import org.rimebook.upkeep.Poured;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
      "  rimebook next-visit my-gauge-2024-25 --antifreeze methanol --coldest -20 --days 90 \\",
      "      --pdf visit.pdf",
      "      with the sheet to take along: what to do, to bring, to write down"
    })
final class NextVisitCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Mixin private PouredOptions options;

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

  @Mixin private LeafletOutput output;

  @Override
  public Integer call() throws InputException {
    Poured like = options.poured(antifreezeL);
    SeasonResult result = SeasonResult.of(Season.open(season));
    try {
      OutlookParts parts = outlook(result, like);
      return output.put(NextVisitLeaflet.of(parts), VisitSheet.of(result, Optional.of(parts)));
    } catch (IllegalArgumentException e) {
      return output.notMade(season + ": " + e.getMessage());
    }
  }

  private OutlookParts outlook(SeasonResult result, Poured like) {
    BucketNow now = BucketNow.of(result.stage(), like);
    CatchRates rates =
        wetRate.isPresent()
            ? CatchRates.given(wetRate.get())
            : CatchRates.of(result.totals(Resolution.HUNDREDTH));
    Plan plan = new Plan(coldestDegC, marginDegC, days);
    StationSheet sheet = result.season().sheet();
    Outlook outlook = Outlook.of(now, rates, like.antifreeze(), plan, sheet.gauge());
    return new OutlookParts(outlook, rates, like.antifreeze(), plan, sheet);
  }
}
