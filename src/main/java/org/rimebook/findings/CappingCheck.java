package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.CapOdds.Odds;
import org.rimebook.findings.SnowOnGround.Growth;
import org.rimebook.findings.SteepRises.Rise;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Snow that bridges the orifice and slides in later: the level stands still though it snows, then
 * rises at once. Where the depth of snow is measured, that has to be likelier than a shower by what
 * {@link CapOdds} weighs. Where it isn't, only what no shower can be is called a cap: more at once
 * than air that cold brings.
 */
final class CappingCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** A cap holds for at least this long, and is looked for no further back [ms]; own choice. */
  private static final long SHORTEST_MS = 4 * HOUR_MS;

  private static final long LONGEST_MS = 72 * HOUR_MS;

  /** The sensor's smoothing looks so far ahead [ms]. */
  private static final long AHEAD_MS = 2 * HOUR_MS;

  /** Growth of snow that is worth a word [cm]. */
  private static final double SEEN_CM = 0.5;

  /**
   * A column of saturated air over ground at −5 °C holds about 8 mm of water (from memory); snow
   * takes hours to bring that.
   */
  private static final double COLD_DEG_C = -5;

  private static final double BEYOND_COLD_MM = 8;

  /** A storm mostly goes on after its first hour and a half, a cap is gone; own choice. */
  private static final double GOES_ON = 0.1;

  private static final int OVER_HOURS = 3;

  @Override
  public FindingKind kind() {
    return FindingKind.CAPPING;
  }

  @Override
  public String method() {
    return "Rises of at least 1 mm within 90 min after at least 4 h without any, when what was"
        + " measured is likelier with a cap than with a shower. Under a cap the snow on the ground grew"
        + " while the level stood still, by 1.1 ± 0.5 cm for each millimetre (Judson and Doesken"
        + " 2000, from memory), and under a shower with the rise if that was snow (by air"
        + " temperature, Jennings et al. 2018); settling, melting and the sensor's wandering, taken"
        + " from the record, are allowed for, a cap is the less likely the more thaw it outlasted,"
        + " and humidity counts as far as it goes with catch in this record (own choice). Where the"
        + " depth of snow isn't measured only 8 mm or more below -5 °C after which the level rises"
        + " by less than a tenth of that in three hours, since smaller caps can't be told from"
        + " showers. Common practice; limits own choice.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    SnowOnGround snow = SnowOnGround.of(blocks);
    CapOdds caps = CapOdds.of(blocks);
    List<Finding> findings = new ArrayList<>();
    double[] airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    for (Rise rise : SteepRises.of(blocks, SHORTEST_MS)) {
      Optional<Odds> odds = caps.of(rise);
      Optional<Finding> finding =
          odds.isEmpty()
              ? byCold(scene, airDegC, rise)
              : odds.filter(CappingCheck::likely).map(of -> bySnow(blocks, snow, rise, of));
      finding.filter(f -> !Marked.in(scene, f.span())).ifPresent(findings::add);
    }
    return findings;
  }

  private static boolean likely(Odds odds) {
    return odds.logOdds() > 0;
  }

  /** Whether a rise within a span is snow that slid in, as the snow on the ground tells. */
  boolean slidIn(Scene scene, Interval span) {
    Blocks blocks = scene.blocks();
    CapOdds caps = CapOdds.of(blocks);
    return SteepRises.of(blocks, SHORTEST_MS).stream()
        .filter(rise -> blocks.span(rise.from(), rise.to()).overlaps(span))
        .anyMatch(rise -> caps.of(rise).filter(CappingCheck::likely).isPresent());
  }

  private Finding bySnow(Blocks blocks, SnowOnGround snow, Rise rise, Odds odds) {
    int hour = RiseHours.perHour(blocks);
    int shortest = (int) Math.floorDiv(SHORTEST_MS, blocks.lengthMs());
    int ahead = (int) Math.floorDiv(AHEAD_MS, blocks.lengthMs());
    Growth growth = snow.growth(odds.back(), rise.from() - ahead);
    boolean sure = growth.cm() >= snow.sureCm();
    int snowing = sure ? Math.min(growth.from(), odds.since()) : odds.since();
    int least = Math.min(snowing - 2 * hour, rise.from() - shortest);
    int since = Math.max(rise.stillFrom(), least);
    Interval span = blocks.span(since, rise.to());
    String reason =
        Words.text(
            "The level stood still for %s%s, then rose by %.1f mm in %s with hardly any new snow."
                + " What was held up fell some time before.",
            Wording.duration(blocks.span(since, rise.from()).lengthMs()),
            growth.cm() < SEEN_CM
                ? ""
                : Words.text(" while snow on the ground grew by %.0f cm", growth.cm()),
            rise.mm(),
            Wording.duration(blocks.span(rise.from(), rise.to()).lengthMs()));
    return finding(span, reason, Math.min(1, 0.7 + 0.03 * rise.mm()));
  }

  private static int back(Blocks blocks, Rise rise) {
    return Math.max(rise.stillFrom(), rise.from() - (int) (LONGEST_MS / blocks.lengthMs()));
  }

  private Optional<Finding> byCold(Scene scene, double[] airDegC, Rise rise) {
    Blocks blocks = scene.blocks();
    double degC = Means.of(airDegC, rise.from(), rise.to());
    boolean known =
        Marked.found(scene, Set.of(FindingKind.RATE), blocks.span(rise.from(), rise.to()));
    if (known
        || !(degC <= COLD_DEG_C && rise.mm() >= BEYOND_COLD_MM)
        || laterMm(blocks, rise) > GOES_ON * rise.mm()) {
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

  /** How much further the level rises after a rise [mm]; NaN when its end isn't known. */
  private static double laterMm(Blocks blocks, Rise rise) {
    int hour = RiseHours.perHour(blocks);
    int over = rise.to() + OVER_HOURS * hour;
    return Fillings.medianMm(blocks, over - hour, over)
        - Fillings.medianMm(blocks, rise.from() - hour, rise.from())
        - rise.mm();
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
