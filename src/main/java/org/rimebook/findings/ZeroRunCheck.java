package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.SnowOnGround.Growth;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

/**
 * Days without catch in which snow on the ground grew: the inlet may have been shut for good, and
 * what fell is lost. Only where the depth of snow is measured.
 */
final class ZeroRunCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** As long at least without catch [ms]; own choice. */
  private static final long LEAST_MS = 12 * HOUR_MS;

  /** Snow can drift by less without any falling [cm]; own choice. */
  private static final double LEAST_CM = 8;

  /** Water that such snow brings at least [mm/cm] and of which nothing was caught; own choice. */
  private static final double CATCH_MM_PER_CM = 0.1;

  private static final double SNOW_DEG_C = 1.5;

  /** The level stands still within this [mm]; own choice. */
  private static final double STILL_MM = 0.25;

  private static final Set<FindingKind> TELLING =
      Set.of(FindingKind.CAPPING, FindingKind.OVERFLOW);

  @Override
  public FindingKind kind() {
    return FindingKind.ZERO_RUN;
  }

  @Override
  public String method() {
    return "At least 12 h in which the level stayed within 0.25 mm while snow on the ground grew by"
        + " 8 cm or more (own choice); needs snow depth beside the wires.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    SnowOnGround snow = SnowOnGround.of(blocks);
    List<Finding> findings = new ArrayList<>();
    if (!snow.known()) {
      return findings;
    }
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int from = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int block = 0; block < blocks.size(); block += hour) {
      double level = Fillings.medianMm(blocks, block, block + hour);
      boolean compares = blocks.segment(block) == blocks.segment(from);
      boolean still =
          compares && Math.max(high, level) - Math.min(low, level) <= STILL_MM;
      if (!still) {
        add(findings, scene, snow, new Growth(from, block, 0));
        from = block;
        low = level;
        high = level;
      } else {
        low = Math.min(low, level);
        high = Math.max(high, level);
      }
    }
    add(findings, scene, snow, new Growth(from, blocks.size(), 0));
    return findings;
  }

  private void add(List<Finding> findings, Scene scene, SnowOnGround snow, Growth still) {
    Blocks blocks = scene.blocks();
    Interval span = blocks.span(still.from(), still.to());
    if (span.lengthMs() < LEAST_MS) {
      return;
    }
    Growth growth = snow.growth(still.from(), still.to());
    double degC =
        ThawSigns.mean(blocks.channel(Channel.AIR_TEMPERATURE), growth.from(), growth.to() + 1);
    boolean snowed =
        growth.cm() >= Math.max(LEAST_CM, snow.sureCm())
            && growth.cm() * CATCH_MM_PER_CM > STILL_MM
            && !(degC > SNOW_DEG_C)
            && snow.knownShare(still.from(), still.to()) > 0.5;
    if (!snowed || settled(scene, blocks.span(growth.from(), growth.to() + 1))) {
      return;
    }
    String reason =
        Wording.text(
            "The level stood still for %s while snow on the ground grew by %.0f cm, at %s on"
                + " average. Something may have kept the snow out.",
            Wording.duration(span.lengthMs()), growth.cm(), Wording.degC(degC));
    findings.add(
        new Finding(
            kind(),
            span,
            List.of(),
            reason,
            Math.min(1, 0.4 + 0.02 * growth.cm()),
            Proposals.remark(span, "Snow fell and none was caught; totals are least values."),
            Optional.of(blocks.span(growth.from(), growth.to() + 1))));
  }

  private static boolean settled(Scene scene, Interval span) {
    return Marked.in(scene, span) || Marked.found(scene, TELLING, span);
  }
}
