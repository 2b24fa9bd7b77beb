package org.rimebook.findings;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimebook.findings.DryFall.Day;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * A leak: the level falls day after day, by night as by day, in the cold as in mild weather, faster
 * than an oil film lets water evaporate and than the level falls at other times. The rate of the
 * dry days goes on while it precipitates, so that what was caught is what the level gained in wet
 * hours and what leaked in them.
 */
final class LeakCheck implements Check {

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = 24 * HOUR_MS;

  /** A day falls by at least so much [mm/d], and as many standard deviations; own choice. */
  private static final double LEAST_MM_PER_DAY = 0.2;

  private static final double SURE_SDS = 3;

  /** Falling days no further apart than this belong together [ms]: it rained between. */
  private static final long TOGETHER_MS = 4 * DAY_MS;

  /** Own choice. */
  private static final long LEAST_MS = 3 * DAY_MS;

  /** Share of the fall by day that there is by night at least; own choice. */
  private static final double BY_NIGHT = 0.7;

  /** It falls so many times as fast as in the other dry days; own choice. */
  private static final double TIMES_OTHER = 2;

  private static final double LEAST_OTHER_DAYS = 4;

  private static final int NIGHT_FROM = 20;
  private static final int NIGHT_TO = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.LEAK;
  }

  @Override
  public String method() {
    return "Dry days, the same time of day compared and the wires' mean temperature effect taken"
        + " off, in which the level falls by 0.2 mm and three standard deviations, for at least"
        + " three days together and twice as fast as on other dry days; nights (20 to 5 h)"
        + " must fall at 0.7 of the rate of the days, since evaporation hardly goes on in the dark."
        + " What was caught is proposed as what the level gained in wet hours and the rate times"
        + " their length (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    HourlyLevel level = HourlyLevel.of(scene);
    int every = level.steps(3 * HOUR_MS);
    DryFall fall = DryFall.of(level, every);
    double limit = Math.max(LEAST_MM_PER_DAY, SURE_SDS * usualSdMm(fall));
    List<Finding> findings = new ArrayList<>();
    List<Day> run = new ArrayList<>();
    for (Day day : fall.changes()) {
      boolean falls = day.mm() <= -limit;
      boolean apart =
          !run.isEmpty()
              && level.startMs(day.from()) - level.startMs(run.get(run.size() - 1).from())
                  > TOGETHER_MS;
      if (!run.isEmpty() && (!falls || apart)) {
        leak(scene, level, fall, run).ifPresent(findings::add);
        run = new ArrayList<>();
      }
      if (falls) {
        run.add(day);
      }
    }
    leak(scene, level, fall, run).ifPresent(findings::add);
    return findings;
  }

  /**
   * Scatter of the changes from one dry day to the next, which a leak that goes on for weeks leaves
   * as it is [mm].
   */
  private static double usualSdMm(DryFall fall) {
    int lag = (int) Math.max(1, Math.round(fall.perDay()));
    List<Day> days = fall.changes();
    List<Day> differences = new ArrayList<>();
    for (int i = lag; i < days.size(); i++) {
      differences.add(
          new Day(days.get(i).from(), days.get(i).mm() - days.get(i - lag).mm(), Double.NaN));
    }
    return new DryFall(differences, fall.perDay()).sdMmPerDay() / Math.sqrt(2);
  }

  private Optional<Finding> leak(Scene scene, HourlyLevel level, DryFall fall, List<Day> run) {
    if (run.isEmpty()) {
      return Optional.empty();
    }
    int from = run.get(0).from();
    int to = run.get(run.size() - 1).from() + level.stepsPerDay();
    Interval span = level.span(from, to);
    ZoneOffset offset = scene.sheet().utcOffset();
    double nightMm = perDayMm(level, from, to, offset, true);
    double dayMm = perDayMm(level, from, to, offset, false);
    boolean alike = nightMm <= BY_NIGHT * dayMm && nightMm <= -LEAST_MM_PER_DAY / 2;
    double mm = run.stream().mapToDouble(Day::mm).average().orElseThrow();
    DryFall.Rate other =
        fall.without(List.of(span), level).rate(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    boolean faster =
        other.days() < LEAST_OTHER_DAYS || mm <= TIMES_OTHER * Math.min(0, other.mmPerDay());
    if (span.lengthMs() < LEAST_MS || !alike || !faster || Marked.inMost(scene, span)) {
      return Optional.empty();
    }
    String reason =
        Words.text(
            "The level fell by %.2f mm a day for %s, by night (%.2f mm a day) as by day (%.2f mm a"
                + " day), mean air temperature %s.",
            -mm,
            Wording.duration(span.lengthMs()),
            -nightMm,
            -dayMm,
            Wording.degC(level.airDegC(from, to)));
    return Optional.of(
        Finding.doubting(
            kind(),
            Finding.Subject.bucket(span),
            reason,
            Math.min(1, 0.6 - 0.2 * mm),
            proposal(span, caughtMm(level, from, to, mm), mm)));
  }

  /** What the level gained in wet hours, and what leaked in them [mm]; NaN where it isn't known. */
  private static double caughtMm(HourlyLevel level, int from, int to, double mmPerDay) {
    double sum = 0;
    for (int step = from; step < to && step + 1 < level.size(); step++) {
      if (level.wet(step, step + 2)) {
        sum += level.changeMm(step, step + 1) - mmPerDay / level.stepsPerDay();
      }
    }
    return sum;
  }

  private static Entry proposal(Interval span, double caughtMm, double mmPerDay) {
    String leaks = Words.text("Leaks %.2f mm a day.", -mmPerDay);
    return Double.isNaN(caughtMm)
        ? Proposals.remark(span, leaks)
        : Proposals.estimate(
            span, Math.max(0, caughtMm), "rises of the level, with what leaked in them", leaks);
  }

  /** Mean change in dry hours of the night, or of the day [mm/d]; NaN when there are none. */
  private static double perDayMm(
      HourlyLevel level, int from, int to, ZoneOffset offset, boolean night) {
    double sum = 0;
    int count = 0;
    for (int step = from; step < to && step + 1 < level.size(); step++) {
      long localMs = level.startMs(step) + offset.getTotalSeconds() * 1000L;
      int hour = (int) (Math.floorMod(localMs, DAY_MS) / HOUR_MS);
      boolean dark = hour >= NIGHT_FROM || hour < NIGHT_TO;
      double change = level.changeMm(step, step + 1);
      if (dark == night && !level.wet(step, step + 2) && Double.isFinite(change)) {
        sum += change;
        count++;
      }
    }
    return count == 0 ? Double.NaN : sum / count * level.stepsPerDay();
  }
}
