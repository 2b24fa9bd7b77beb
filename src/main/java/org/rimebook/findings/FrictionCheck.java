package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Something touches: a wire, or the whole bucket, stays where it is while it precipitates and
 * catches up in steps, again and again.
 */
final class FrictionCheck implements Check {

  /** So often it has to happen, with at most so long between [ms]; own choice. */
  private static final int LEAST_SLIPS = 4;

  private static final long WIRE_NEAR_MS = 15 * 86_400_000L;
  private static final int LEAST_STEPS = 5;
  private static final long BUCKET_NEAR_MS = 12 * 3_600_000L;

  /** The catch of the first step is looked for in so much time before it [ms]; own choice. */
  private static final long BEFORE_MS = 6 * 3_600_000L;

  @Override
  public FindingKind kind() {
    return FindingKind.FRICTION;
  }

  @Override
  public String method() {
    return "A wire falls behind the others while they rise and catches up within two blocks of ten"
        + " minutes, by 0.3 mm, six standard deviations and three steps of its counter, four times"
        + " or more; or the level stands"
        + " still, steps up by as much within a few readings and stands still again, five times or"
        + " more in half days (own choice). Read every two minutes at least for the latter.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    if (scene.record().size() == 0) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    HourlyNoise noise = new HourlyNoise(scene);
    for (int wire = 0; wire < scene.sheet().wires().size(); wire++) {
      List<Slip> slips = new WireSlips(scene, noise, wire).find();
      for (List<Slip> group : Slip.groups(slips, WIRE_NEAR_MS)) {
        if (group.size() >= LEAST_SLIPS) {
          findings.add(wire(scene, wire, group));
        }
      }
    }
    for (List<Slip> group : Slip.groups(new LevelSteps(scene, noise).find(), BUCKET_NEAR_MS)) {
      if (group.size() >= LEAST_STEPS) {
        findings.add(bucket(group));
      }
    }
    findings.sort(Findings.BY_TIME);
    return findings;
  }

  private Finding wire(Scene scene, int wire, List<Slip> slips) {
    Interval span = Slip.span(slips);
    String name = scene.wireName(wire);
    String reason =
        Words.text(
            "%s stays behind while the others rise and catches up in steps: %d times, by %.1f to"
                + " %.1f mm. Something touches it.",
            name, slips.size(), Slip.leastMm(slips), Slip.mostMm(slips));
    return Finding.doubting(
        kind(),
        Finding.Subject.wire(span, name),
        reason,
        Math.min(1, 0.4 + 0.05 * slips.size()),
        Proposals.bad(span, List.of(name), BadReason.OBSTRUCTION, "Sticks and slips."));
  }

  /** What was caught is right once it has slipped; only when isn't known. */
  private Finding bucket(List<Slip> steps) {
    Interval all = Slip.span(steps);
    long before = steps.get(0).span().toMs() - BEFORE_MS;
    Interval span = new Interval(Math.max(all.fromMs(), before), all.toMs());
    String reason =
        Words.text(
            "The level stands still and steps up, %d times, by %.1f to %.1f mm within a few"
                + " readings: the bucket touches something.",
            steps.size(), Slip.leastMm(steps), Slip.mostMm(steps));
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        Math.min(1, 0.3 + 0.05 * steps.size()),
        Proposals.late(span, "The bucket sticks and slips."));
  }
}
