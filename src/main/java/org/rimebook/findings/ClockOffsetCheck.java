package org.rimebook.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Summer time or another time zone: from a step of the clock on, or all season, air temperature and
 * supply run their daily course earlier or later by a whole part of an hour.
 */
final class ClockOffsetCheck implements Check {

  private static final double HOUR_MS = 3_600_000;
  private static final double HALF_HOUR_MS = 1_800_000;
  private static final double LONGEST_STEPS = 6;
  private static final long LEAST_MS = 5 * 86_400_000L;

  /** Half swings of a day that tell [V, °C]; own choice. */
  private static final double LEAST_V = 0.03;

  private static final double LEAST_DEG_C = 0.5;

  /** A shift counts when it is so many standard errors, and so near what the step says. */
  private static final double SURE_ERRORS = 4;

  private static final double NEAR = 0.4;
  private static final double LEAST_ERROR_H = 0.05;

  /** An hour back, which is certain of itself, counts when the shift agrees within so many. */
  private static final double AGREES_ERRORS = 3;

  /** The air is warmest so long after the sun stands highest [h]; common practice, 2 to 3.5 h. */
  private static final double WARMEST_H = 2.75;

  /** The sun's stand tells offsets of a whole season from here on [h]; own choice. */
  private static final double LEAST_OFFSET_H = 2.5;

  private static final double DEG_PER_H = 15;
  private static final int DAY_H = 24;

  @Override
  public FindingKind kind() {
    return FindingKind.CLOCK_OFFSET;
  }

  @Override
  public String method() {
    return "Steps of the clock by a whole number of half hours: one back that has its hole, or one"
        + " by itself when the first harmonics of the daily courses of supply voltage and air"
        + " temperature shift with it, medians of three weeks before and after, by more than four"
        + " standard errors and within 40 % of the step; an hour that the file has twice when the"
        + " shift agrees with it within three. For a whole season: the air is warmest"
        + " 2.5 h or more off its usual time, 2.75 h after the sun stands highest by longitude"
        + " (common practice; limits are our own choice). The equation of time, a quarter of an"
        + " hour, is left out.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    SeasonRecord record = scene.record();
    DailyPhase supply = DailyPhase.of(scene, Channel.SUPPLY_VOLTAGE, LEAST_V);
    DailyPhase air = DailyPhase.of(scene, Channel.AIR_TEMPERATURE, LEAST_DEG_C);
    Set<ClockSteps.Step> drift = new HashSet<>();
    ClockDriftCheck.in(scene).forEach(of -> drift.addAll(of.steps()));
    List<ClockSteps.Step> holes = new ArrayList<>(ClockSteps.holes(record, 1, 60_000));
    List<Finding> findings = new ArrayList<>();
    List<ClockSteps.Step> alone = new ArrayList<>();
    for (ClockSteps.Step back : ClockSteps.back(record)) {
      Optional<ClockSteps.Step> hole = ClockJumpCheck.otherEnd(scene, back, holes);
      hole.ifPresent(holes::remove);
      if (hole.isPresent() && isWhole(record, back) && !drift.contains(back)) {
        findings.addAll(between(back, hole.get()));
      } else if (hole.isEmpty()) {
        alone.add(back);
      }
    }
    alone.addAll(holes);
    for (ClockSteps.Step step : alone) {
      if (isWhole(record, step) && !drift.contains(step)) {
        findings.addAll(alone(record, step, List.of(supply, air)));
      }
    }
    if (findings.isEmpty()) {
      findings.addAll(allSeason(scene, air));
    }
    findings.sort(Findings.BY_TIME);
    return findings;
  }

  private static boolean isHour(SeasonRecord record, ClockSteps.Step step) {
    return Math.abs(Math.abs(step.byMs()) - HOUR_MS) <= slackMs(record);
  }

  private static double slackMs(SeasonRecord record) {
    return Math.max(60_000, record.sampling().get(0).intervalMs() / 2.0);
  }

  private static boolean isWhole(SeasonRecord record, ClockSteps.Step step) {
    double halves = Math.rint(step.byMs() / HALF_HOUR_MS);
    double off = Math.abs(step.byMs() - halves * HALF_HOUR_MS);
    return halves != 0 && Math.abs(halves) <= LONGEST_STEPS && off <= slackMs(record);
  }

  private List<Finding> between(ClockSteps.Step back, ClockSteps.Step hole) {
    Interval span = ClockJumpCheck.between(back, hole);
    if (span.lengthMs() < LEAST_MS) {
      return List.of();
    }
    boolean fast = hole.atMs() < back.atMs();
    String reason =
        Words.text(
            "The clock was set %s by %s and %s by the same after %s, as for summer time.",
            fast ? "forward" : "back",
            Wording.duration(Math.abs(back.byMs())),
            fast ? "back" : "forward",
            Wording.duration(span.lengthMs()));
    return List.of(finding(span, reason, 0.95, fast ? -back.byMs() : back.byMs()));
  }

  private List<Finding> alone(
      SeasonRecord record, ClockSteps.Step step, List<DailyPhase> channels) {
    double weight = 0;
    double sum = 0;
    for (DailyPhase channel : channels) {
      DailyPhase.Noon before = channel.before(step.atMs());
      DailyPhase.Noon after = channel.after(step.resumedMs());
      if (before.known() && after.known()) {
        double variance =
            LEAST_ERROR_H * LEAST_ERROR_H
                + before.errorH() * before.errorH()
                + after.errorH() * after.errorH();
        weight += 1 / variance;
        double shift = after.hour() - before.hour();
        sum += (shift - DAY_H * Math.rint(shift / DAY_H)) / variance;
      }
    }
    double shiftH = sum / weight;
    if (!shifts(record, step, shiftH, 1 / Math.sqrt(weight))) {
      return List.of();
    }
    Interval earlier = new Interval(record.stampMs(0), step.atMs());
    Interval later =
        new Interval(
            Math.min(step.resumedMs(), record.stampMs(record.size() - 1)),
            record.stampMs(record.size() - 1));
    boolean first = earlier.lengthMs() < later.lengthMs();
    String reason =
        Words.text(
            "The clock was set %s by %s, and from there on the daily course of what the sun drives"
                + " comes %.2f h %s. The shorter side is taken for the wrong one.",
            step.back() ? "back" : "forward",
            Wording.duration(Math.abs(step.byMs())),
            Math.abs(shiftH),
            shiftH < 0 ? "earlier" : "later");
    return List.of(
        finding(first ? earlier : later, reason, 0.8, first ? -step.byMs() : step.byMs()));
  }

  /** Whether the daily courses shift with the step, or don't speak against an hour set back. */
  private static boolean shifts(
      SeasonRecord record, ClockSteps.Step step, double shiftH, double errorH) {
    double expectedH = step.byMs() / HOUR_MS;
    double awayH = Math.abs(shiftH - expectedH);
    boolean sure = Math.abs(shiftH) > SURE_ERRORS * errorH && awayH <= NEAR * Math.abs(expectedH);
    return sure || step.back() && isHour(record, step) && awayH <= AGREES_ERRORS * errorH;
  }

  private List<Finding> allSeason(Scene scene, DailyPhase air) {
    SeasonRecord record = scene.record();
    Interval all = new Interval(record.stampMs(0), record.stampMs(record.size() - 1));
    DailyPhase.Noon warmest = air.noon(all);
    if (scene.sheet().longitudeDeg().isEmpty() || !warmest.known()) {
      return List.of();
    }
    double offsetH = scene.sheet().utcOffset().getTotalSeconds() * 1000L / HOUR_MS;
    double noonH = 12 + offsetH - scene.sheet().longitudeDeg().getAsDouble() / DEG_PER_H;
    double off = warmest.hour() - noonH - WARMEST_H;
    off -= DAY_H * Math.rint(off / DAY_H);
    if (Math.abs(off) < LEAST_OFFSET_H + SURE_ERRORS * warmest.errorH()) {
      return List.of();
    }
    String reason =
        Words.text(
            "The air is warmest at %.1f h by the record; by longitude the sun stands highest at"
                + " %.1f h and warms most about %.2f h later: the clock, or utc_offset, is off by"
                + " about %.0f h all season.",
            (warmest.hour() + DAY_H) % DAY_H, (noonH + DAY_H) % DAY_H, WARMEST_H, Math.abs(off));
    return List.of(finding(all, reason, 0.8, Math.rint(off) * HOUR_MS));
  }

  private Finding finding(Interval span, String reason, double strength, double fastMs) {
    String note =
        Words.text(
            "Clock %s by %s: mend the stamps in a copy of the file, or utc_offset in the station"
                + " sheet when it is off all season.",
            fastMs > 0 ? "fast" : "slow", Wording.duration((long) Math.abs(fastMs)));
    return Finding.doubting(
        kind(), Finding.Subject.bucket(span), reason, strength, Proposals.remark(span, note));
  }
}
