package org.rimebook.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rimebook.export.leaflet.ChargeLeaflet;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonDepths;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;
import org.rimebook.upkeep.ChargeCheck;
import org.rimebook.upkeep.Poured;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Compares what was poured in with what the wires show. */
@Command(
    name = "charge",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Compare the litres of each service visit with the rise that each wire shows: a check of"
            + " orifice, calibrations and notebook at once.",
    footerHeading = "%nExample:%n",
    footer = {"  rimebook charge my-gauge-2024-25 --antifreeze propylene-glycol --strength 60"})
final class ChargeCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Mixin private PouredOptions options;

  @Mixin private LeafletOutput output;

  @Override
  public Integer call() throws InputException {
    SeasonDepths depths = SeasonDepths.of(Season.open(season), Progress.NONE);
    Poured like = options.poured(0);
    return output.put(
        ChargeLeaflet.of(ChargeCheck.of(depths, like), like, depths.season().sheet()));
  }
}
