package org.rimebook.findings;

import java.util.List;
import java.util.stream.Stream;
import org.rimebook.findings.DryFall.Rate;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Evaporation: the level falls from one dry mild day to the next and not, or much less, in the
 * cold. The totals are worked out with it in mind, so they stand.
 */
final class EvaporationCheck implements Check {

  private static final long HOUR_MS = 3_600_000;
  private static final double DAY_MS = 24.0 * HOUR_MS;

  /** Water doesn't evaporate to speak of below; own choice. */
  private static final double COLD_DEG_C = -5;

  private static final double MILD_DEG_C = -1;

  /** Less doesn't matter [mm/d]; an oil film keeps it below that. Own choice. */
  private static final double LEAST_MM_PER_DAY = 0.04;

  private static final double SURE_SDS = 3;
  private static final double LEAST_DAYS = 4;

  /** Share of the mild fall that makes a fall in the cold something else; own choice. */
  private static final double SAME_IN_COLD = 0.7;

  @Override
  public FindingKind kind() {
    return FindingKind.EVAPORATION;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "Median change of the level over dry days, the same time of day compared and the"
        + " wires' mean temperature effect (Lamb, Persaud and Mouradian 2009) taken off; days above"
        + " -1 °C must fall by 0.04 mm/d and three standard errors, and colder ones below -5 °C by"
        + " less than 0.7 of that (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    HourlyLevel level = HourlyLevel.of(scene);
    DryFall fall = DryFall.of(level, level.steps(3 * HOUR_MS)).without(leaking(scene), level);
    Rate mild = fall.rate(MILD_DEG_C, Double.POSITIVE_INFINITY);
    Rate cold = fall.rate(Double.NEGATIVE_INFINITY, COLD_DEG_C);
    boolean falls =
        mild.days() >= LEAST_DAYS
            && mild.mmPerDay() <= -LEAST_MM_PER_DAY
            && mild.mmPerDay() <= -SURE_SDS * mild.sdMmPerDay();
    boolean inColdToo =
        level.knowsAir()
            && cold.days() >= LEAST_DAYS
            && cold.mmPerDay() - 2 * cold.sdMmPerDay() <= SAME_IN_COLD * mild.mmPerDay()
            && cold.mmPerDay() <= -LEAST_MM_PER_DAY;
    return falls && !inColdToo ? List.of(finding(level, mild)) : List.of();
  }

  /** Where the level fell for another reason: it leaked, or somebody has said what was caught. */
  private static List<Interval> leaking(Scene scene) {
    Stream<Interval> found =
        scene.found().stream()
            .filter(finding -> finding.kind() == FindingKind.LEAK)
            .map(Finding::span);
    return Stream.concat(found, scene.spans(Entry.Estimate.class).stream()).toList();
  }

  private Finding finding(HourlyLevel level, Rate mild) {
    Interval span = level.span(0, level.size());
    double mildDays = mildDays(level);
    String where = level.knowsAir() ? "dry days above -1 °C" : "dry days";
    String reason =
        Words.text(
            "In %s the level fell by %.2f mm a day (standard uncertainty %.2f mm, from %.0f days)."
                + " Over %.0f such days of the season that makes about %.1f mm.",
            where,
            -mild.mmPerDay(),
            mild.sdMmPerDay(),
            mild.days(),
            mildDays,
            -mild.mmPerDay() * mildDays);
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        Math.min(1, 0.3 - mild.mmPerDay()),
        Proposals.remark(
            span, Words.text("Evaporates %.2f mm a day in mild weather.", -mild.mmPerDay())));
  }

  private static double mildDays(HourlyLevel level) {
    int count = 0;
    for (int step = 0; step < level.size(); step++) {
      count += level.airDegC(step, step + 1) < MILD_DEG_C ? 0 : 1;
    }
    return count * level.stepMs() / DAY_MS;
  }
}
