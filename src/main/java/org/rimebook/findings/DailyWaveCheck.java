package org.rimebook.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Wires that move apart and together once a day, with the sun. The mean of all wires moves less, so
 * the totals stand; a northern wire that moves more than another hints at exchanged wires.
 */
final class DailyWaveCheck implements Check {

  /** Larger waves matter to hourly totals [mm]; own choice. */
  private static final double LARGE_MM = 0.15;

  /** Fewer dry days tell nothing; own choice. */
  private static final int LEAST_DAYS = 12;

  /** The shaded wire moves clearly more than another by this factor; own choice. */
  private static final double CLEARLY = 2;

  private static final Set<String> NORTH = Set.of("north", "n");
  private static final Set<String> SOUTH = Set.of("south", "s");

  @Override
  public FindingKind kind() {
    return FindingKind.DAILY_WAVE;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "Each wire's departure from the mean of all, by hour of the day, in medians over the dry"
        + " days; raised from an amplitude of 0.15 mm (own choice). The wire on the shaded side"
        + " should move least (common practice), which is judged after taking off -0.004 % of the"
        + " reading per degree where the air's temperature is measured (Lamb et al. 2009).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    int wires = scene.sheet().wires().size();
    if (wires < 2 || scene.record().size() == 0) {
      return List.of();
    }
    SharedHours hours = SharedHours.of(scene);
    DailyHarmonic daily = new DailyHarmonic(hours, scene.sheet().utcOffset());
    if (daily.days() < LEAST_DAYS) {
      return List.of();
    }
    double[] apartMm = new double[wires];
    Arrays.setAll(apartMm, w -> daily.amplitude(h -> hours.depthMm(w, h) - daily.meanMm(h)));
    Interval season = SharedHours.season(scene).orElseThrow();
    int[] large =
        IntStream.range(0, wires)
            .filter(w -> apartMm[w] >= LARGE_MM)
            .filter(w -> !WireSpans.calibrationDoubted(scene, w, season))
            .toArray();
    return large.length == 0
        ? List.of()
        : List.of(finding(scene, large, apartMm, ownMm(scene, hours, daily)));
  }

  /** Amplitude of each wire's own wave, without what temperature usually does [mm]. */
  private static double[] ownMm(Scene scene, SharedHours hours, DailyHarmonic daily) {
    double[] degC = scene.blocks().channel(Channel.AIR_TEMPERATURE);
    double[] own = new double[hours.wires()];
    Arrays.setAll(
        own,
        w ->
            daily.amplitude(
                h -> {
                  double perDegC = UsualTemperature.perDegC(scene, w);
                  double depth = hours.depthMm(w, h);
                  double warm = degC.length == 0 ? 0 : degC[scene.blocks().at(hours.startMs(h))];
                  return depth - perDegC * depth * (Double.isFinite(warm) ? warm : 0);
                }));
    return own;
  }

  private Finding finding(Scene scene, int[] large, double[] apartMm, double[] ownMm) {
    Interval span = SharedHours.season(scene).orElseThrow();
    List<String> names = Arrays.stream(large).mapToObj(scene::wireName).toList();
    List<String> sizes =
        IntStream.range(0, apartMm.length)
            .mapToObj(w -> Words.text("%s by %.2f mm", scene.wireName(w), apartMm[w]))
            .toList();
    String side = shaded(scene, ownMm);
    String reason =
        "On dry days the wires move about their mean once a day: "
            + Wording.names(sizes)
            + " either way"
            + Words.text(", %.2f mm and less being usual.", LARGE_MM)
            + side;
    double most = Arrays.stream(apartMm).max().orElse(0);
    double strength = Math.min(0.9, 0.2 + 0.3 * most / LARGE_MM / CLEARLY);
    return Finding.harmless(
        kind(),
        new Finding.Subject(span, names),
        reason,
        side.isEmpty() ? Math.min(0.5, strength) : strength,
        Proposals.remark(span, "Daily wave of the wires."));
  }

  /** Says it when the wire on the shaded side clearly isn't the one that moves least. */
  private static String shaded(Scene scene, double[] ownMm) {
    OptionalInt at = shadedWire(scene);
    int least = IntStream.range(0, ownMm.length).reduce(0, (a, b) -> ownMm[b] < ownMm[a] ? b : a);
    if (at.isEmpty() || least == at.getAsInt()) {
      return "";
    }
    double shadedMm = ownMm[at.getAsInt()];
    return shadedMm < LARGE_MM || shadedMm < CLEARLY * ownMm[least]
        ? ""
        : Words.text(
            " %s should move least but moves by %.2f mm, %s by %.2f mm: the wires' places or leads"
                + " may not be as the sheet has them.",
            scene.wireName(at.getAsInt()), shadedMm, scene.wireName(least), ownMm[least]);
  }

  private static OptionalInt shadedWire(Scene scene) {
    Set<String> side = scene.sheet().latitudeDeg().orElse(1) < 0 ? SOUTH : NORTH;
    return IntStream.range(0, scene.sheet().wires().size())
        .filter(w -> side.contains(scene.wireName(w).toLowerCase(Locale.ROOT)))
        .findFirst();
  }
}
