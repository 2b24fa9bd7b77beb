package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** A clock that gains or loses minutes and is set right at visits. */
final class ClockDriftCheck implements Check {

  /** Shifts below this leave hours as they are; a quarter of an hour, own choice. */
  static final long MATTERS_MS = 15 * 60_000;

  private static final double MS_PER_DAY = 86_400_000;
  private static final long MINUTE_MS = 60_000;
  private static final double HALF_SURE = 0.6;

  @Override
  public FindingKind kind() {
    return FindingKind.CLOCK_DRIFT;
  }

  @Override
  public String method() {
    return "Steps of the clock that grow with the time since the one before, all at one rate within"
        + " 30 % and under 5 min a day: times the file has twice (two corrections or more), or"
        + " holes under an hour before which the supply hadn't sagged (three or more), and none that"
        + " a step the other way undoes. Own choice. Totals are doubted where the clock"
        + " was off by a quarter of an hour or more.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    List<Finding> findings = new ArrayList<>();
    for (ClockDrift drift : in(scene)) {
      findings.addAll(findings(scene, drift));
    }
    return findings;
  }

  static List<ClockDrift> in(Scene scene) {
    SeasonRecord record = scene.record();
    Supply supply = Supply.of(scene);
    List<ClockSteps.Step> holes = ClockSteps.holes(record, 2, 2 * MINUTE_MS);
    List<ClockSteps.Step> back =
        ClockSteps.back(record).stream()
            .filter(step -> holes.stream().noneMatch(hole -> undoes(hole, step)))
            .toList();
    List<ClockSteps.Step> forward =
        holes.stream()
            .filter(hole -> !scene.explained(new Interval(hole.atMs(), hole.resumedMs())))
            .filter(hole -> !supply.saggedBefore(hole.atMs()))
            .toList();
    return ClockDrift.of(record.stampMs(0), back, forward);
  }

  /** A clock that was set one way and then as far the other way jumped, and drifts no more. */
  private static boolean undoes(ClockSteps.Step hole, ClockSteps.Step back) {
    return Math.abs(hole.byMs() + back.byMs()) <= 2 * MINUTE_MS;
  }

  private List<Finding> findings(Scene scene, ClockDrift drift) {
    List<Finding> findings = new ArrayList<>();
    long last = scene.record().stampMs(0);
    List<ClockSteps.Step> steps = drift.steps();
    if (drift.mostMs() < MATTERS_MS) {
      Interval all = new Interval(last, steps.get(steps.size() - 1).atMs());
      return List.of(finding(drift, all, drift.mostMs(), Optional.empty()));
    }
    for (ClockSteps.Step step : steps) {
      Interval span = new Interval(last, Math.max(last, step.atMs()));
      long offMs = Math.abs(step.byMs());
      if (offMs >= MATTERS_MS) {
        long early = (long) (span.lengthMs() * (MATTERS_MS / (double) offMs));
        Interval late = new Interval(span.fromMs() + early, span.toMs());
        findings.add(finding(drift, span, offMs, Optional.of(late)));
      }
      last = step.resumedMs();
    }
    return findings;
  }

  private Finding finding(ClockDrift drift, Interval span, long offMs, Optional<Interval> doubted) {
    double minutesPerDay = Math.abs(drift.rate()) * MS_PER_DAY / MINUTE_MS;
    String reason =
        Words.text(
            "The clock %s %.2f min a day: it was set %s %d times, by what had come together since"
                + " the time before, at most %s here.",
            drift.rate() > 0 ? "gains" : "loses",
            minutesPerDay,
            drift.rate() > 0 ? "back" : "forward",
            drift.steps().size(),
            Wording.duration(offMs));
    String note =
        Words.text(
            "Clock %s by up to %s before it was set: mend the stamps in a copy of the file.",
            drift.rate() > 0 ? "fast" : "slow", Wording.duration(offMs));
    return new Finding(
        kind(), span, List.of(), reason, HALF_SURE, Proposals.remark(span, note), doubted);
  }
}
