package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.SnowOnGround.Growth;
import org.rimebook.findings.SteepRises.Rise;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Snow that bridges the orifice and slides in later: the level stands still though it snows, then
 * rises at once. Where the depth of snow is measured, snow has to grow while the level stands still
 * and not while it rises. Where it isn't, only what no shower can be is called a cap: more at once
 * than air that cold brings.
 */
final class CappingCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** A cap holds for at least this long, and is looked for no further back [ms]; own choice. */
  private static final long SHORTEST_MS = 4 * HOUR_MS;

  private static final long LONGEST_MS = 72 * HOUR_MS;

  /** Fresh snow has at least so much depth to its water [cm/mm], settled (own choice). */
  private static final double LEAST_CM_PER_MM = 0.25;

  /** Growth of snow to the water of a rise that makes it a snowfall [cm/mm]; own choice. */
  private static final double SNOWFALL_CM_PER_MM = 0.5;

  /** A cap needs snow: air no warmer than that while it grew; own choice. */
  private static final double SNOW_DEG_C = 1.5;

  /** No cap outlasts so many hours of air that warm; own choice. */
  private static final int THAW_HOURS = 6;

  private static final double THAW_DEG_C = 2;

  /** Share of the time in which the depth of snow has to be known. */
  private static final double KNOWN = 0.5;

  /**
   * What rises in air that cold is snow; where so much less lies on the ground than that brings
   * [cm], it didn't fall then, and less growth before is enough. Own choice.
   */
  private static final double FROST_DEG_C = -2;

  private static final double LACKING_CM = 1;

  /** The sensor's smoothing looks so far ahead [ms]. */
  private static final long AHEAD_MS = 2 * HOUR_MS;

  /**
   * A column of saturated air over ground at −5 °C holds about 8 mm of water (from memory); snow
   * takes hours to bring that.
   */
  private static final double COLD_DEG_C = -5;

  private static final double BEYOND_COLD_MM = 8;

  @Override
  public FindingKind kind() {
    return FindingKind.CAPPING;
  }

  @Override
  public String method() {
    return "Rises of at least 1 mm within 90 min after at least 4 h without any, during which snow"
        + " on the ground grew in half a day by more than the sensor's usual wandering (half of that"
        + " when snow is lacking that would have come with the rise below -2 °C) and by 0.25 cm for"
        + " each millimetre in all, and by less than 0.5 cm for each during the rise, no six hours"
        + " being above 2 °C between. Where the"
        + " depth of snow isn't measured only 8 mm or more below -5 °C, since smaller caps can't be"
        + " told from showers. Common practice; limits own choice.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    SnowOnGround snow = SnowOnGround.of(blocks);
    List<Finding> findings = new ArrayList<>();
    double[] airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    for (Rise rise : SteepRises.of(blocks, SHORTEST_MS)) {
      Optional<Finding> finding =
          measured(blocks, snow, rise)
              ? bySnow(blocks, snow, airDegC, rise)
              : byCold(scene, airDegC, rise);
      finding.filter(f -> !Marked.in(scene, f.span())).ifPresent(findings::add);
    }
    return findings;
  }

  /** Whether a rise within a span is snow that slid in, as the snow on the ground tells. */
  boolean slidIn(Scene scene, Interval span) {
    Blocks blocks = scene.blocks();
    SnowOnGround snow = SnowOnGround.of(blocks);
    double[] airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    return snow.known()
        && SteepRises.of(blocks, SHORTEST_MS).stream()
            .filter(rise -> blocks.span(rise.from(), rise.to()).overlaps(span))
            .anyMatch(
                rise ->
                    measured(blocks, snow, rise)
                        && bySnow(blocks, snow, airDegC, rise).isPresent());
  }

  /** Whether the depth of snow tells what happened, so that nothing is left to guess. */
  private static boolean measured(Blocks blocks, SnowOnGround snow, Rise rise) {
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    return snow.known()
        && snow.knownShare(back(blocks, rise), rise.from()) > KNOWN
        && snow.knownShare(rise.from() - hour, Math.min(blocks.size(), rise.to() + hour)) > KNOWN;
  }

  private static int back(Blocks blocks, Rise rise) {
    return Math.max(rise.stillFrom(), rise.from() - (int) (LONGEST_MS / blocks.lengthMs()));
  }

  private Optional<Finding> bySnow(Blocks blocks, SnowOnGround snow, double[] airDegC, Rise rise) {
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int back = back(blocks, rise);
    int ahead = (int) Math.floorDiv(AHEAD_MS, blocks.lengthMs());
    Growth growth = snow.growth(back, rise.from() - ahead);
    int since = Math.max(rise.stillFrom(), growth.from() - 2 * hour);
    double during = snow.growth(rise.from() - hour, rise.to() + hour).cm();
    double degC = Means.of(airDegC, growth.from(), growth.to() + 1);
    boolean slid =
        Means.of(airDegC, rise.from(), rise.to()) < FROST_DEG_C
            && SNOWFALL_CM_PER_MM * rise.mm() - during >= LACKING_CM;
    boolean held =
        snow.quickGrowthCm(back, rise.from() - ahead) >= (slid ? 0.5 : 1) * snow.sureCm()
            && growth.cm() >= LEAST_CM_PER_MM * rise.mm()
            && during <= SNOWFALL_CM_PER_MM * rise.mm()
            && !(degC > SNOW_DEG_C)
            && !thawed(airDegC, growth.to(), rise.from() - hour, THAW_HOURS * hour)
            && rise.from() - since >= SHORTEST_MS / blocks.lengthMs();
    if (!held) {
      return Optional.empty();
    }
    Interval span = blocks.span(since, rise.to());
    String reason =
        Words.text(
            "The level stood still for %s while snow on the ground grew by %.0f cm, then rose by"
                + " %.1f mm in %s with hardly any new snow. What was held up fell some time before.",
            Wording.duration(blocks.span(since, rise.from()).lengthMs()),
            growth.cm(),
            rise.mm(),
            Wording.duration(blocks.span(rise.from(), rise.to()).lengthMs()));
    return Optional.of(finding(span, reason, Math.min(1, 0.7 + 0.03 * rise.mm())));
  }

  /** Whether air was so warm for so long that a cap had gone before. */
  private static boolean thawed(double[] airDegC, int from, int to, int blocks) {
    for (int block = from; block + blocks <= to; block++) {
      if (Means.of(airDegC, block, block + blocks) > THAW_DEG_C) {
        return true;
      }
    }
    return false;
  }

  private Optional<Finding> byCold(Scene scene, double[] airDegC, Rise rise) {
    Blocks blocks = scene.blocks();
    double degC = Means.of(airDegC, rise.from(), rise.to());
    boolean known =
        Marked.found(scene, Set.of(FindingKind.RATE), blocks.span(rise.from(), rise.to()));
    if (known || !(degC <= COLD_DEG_C && rise.mm() >= BEYOND_COLD_MM)) {
      return Optional.empty();
    }
    int back = back(blocks, rise);
    Interval span = blocks.span(back, rise.to());
    String reason =
        Words.text(
            "The level stood still for %s, then rose by %.1f mm in %s at %s: more than air that"
                + " cold brings in the time. Snow on the inlet will have slid in.",
            Wording.duration(blocks.span(back, rise.from()).lengthMs()),
            rise.mm(),
            Wording.duration(blocks.span(rise.from(), rise.to()).lengthMs()),
            Wording.degC(degC));
    return Optional.of(finding(span, reason, Math.min(1, 0.5 + 0.02 * rise.mm())));
  }

  private Finding finding(Interval span, String reason, double strength) {
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        strength,
        Proposals.late(span, "The inlet was capped; the snow slid in at the end."));
  }
}
