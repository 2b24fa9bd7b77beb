package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.SnowOnGround.Growth;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Days without catch in which snow on the ground grew: the inlet may have been shut for good, and
 * what fell is lost. Only where the depth of snow is measured.
 */
final class ZeroRunCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** As long at least without catch [ms]; own choice. */
  private static final long LEAST_MS = 12 * HOUR_MS;

  /** Snow can drift by less without any falling [cm]; own choice. */
  private static final double LEAST_CM = 6;

  /** The sensor's smoothing looks so far ahead [ms]. */
  private static final long AHEAD_MS = 2 * HOUR_MS;

  /** Share of the time in which the depth has to be known. */
  private static final double KNOWN = 0.5;

  private static final double SNOW_DEG_C = 1.5;

  /** The level rises by no more [mm], and moves by no more than twice that; own choice. */
  private static final double STILL_MM = 0.3;

  private static final Set<FindingKind> TELLING = Set.of(FindingKind.CAPPING, FindingKind.OVERFLOW);

  @Override
  public FindingKind kind() {
    return FindingKind.ZERO_RUN;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "At least 12 h in which the level rose by no more than 0.3 mm while snow on the ground grew by"
        + " 6 cm or more (own choice); needs snow depth beside the wires.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    SnowOnGround snow = SnowOnGround.of(blocks);
    List<Finding> findings = new ArrayList<>();
    if (!snow.known()) {
      return findings;
    }
    double[] airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int from = 0;
    double first = Double.NaN;
    double low = Double.NaN;
    double high = Double.NaN;
    for (int block = 0; block < blocks.size(); block += hour) {
      double level = Fillings.medianMm(blocks, block, block + hour);
      boolean still =
          blocks.segment(block) == blocks.segment(from)
              && level - first <= STILL_MM
              && Math.max(high, level) - Math.min(low, level) <= 2 * STILL_MM;
      if (!still) {
        look(scene, snow, airDegC, new Growth(from, block, 0)).ifPresent(findings::add);
        from = block;
        first = level;
      }
      low = still ? Math.min(low, level) : level;
      high = still ? Math.max(high, level) : level;
    }
    look(scene, snow, airDegC, new Growth(from, blocks.size(), 0)).ifPresent(findings::add);
    return findings;
  }

  private Optional<Finding> look(Scene scene, SnowOnGround snow, double[] airDegC, Growth still) {
    Blocks blocks = scene.blocks();
    Interval span = blocks.span(still.from(), still.to());
    if (span.lengthMs() < LEAST_MS) {
      return Optional.empty();
    }
    int ahead = (int) Math.floorDiv(AHEAD_MS, blocks.lengthMs());
    Growth growth = snow.growth(still.from(), still.to() - ahead);
    double degC = Means.of(airDegC, growth.from(), growth.to() + 1);
    Interval snowing = blocks.span(growth.from(), growth.to() + 1);
    boolean snowed =
        growth.cm() >= Math.max(LEAST_CM, snow.sureCm())
            && !(degC > SNOW_DEG_C)
            && snow.knownShare(still.from(), still.to()) > KNOWN;
    return snowed && !settled(scene, snowing)
        ? Optional.of(finding(span, snowing, growth.cm(), degC))
        : Optional.empty();
  }

  private Finding finding(Interval span, Interval snowing, double cm, double degC) {
    String reason =
        Words.text(
            "The level stood still for %s while snow on the ground grew by %.0f cm, at %s on"
                + " average. Something may have kept the snow out.",
            Wording.duration(span.lengthMs()), cm, Wording.degC(degC));
    return new Finding(
        kind(),
        span,
        List.of(),
        reason,
        Math.min(1, 0.4 + 0.02 * cm),
        Proposals.remark(span, "Snow fell and none was caught; totals are least values."),
        Optional.of(snowing));
  }

  private static boolean settled(Scene scene, Interval span) {
    return Marked.in(scene, span) || Marked.found(scene, TELLING, span);
  }
}
