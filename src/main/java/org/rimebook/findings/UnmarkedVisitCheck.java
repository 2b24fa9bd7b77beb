package org.rimebook.findings;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.rimebook.notebook.VisitAction;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Service visits nobody marked. What was done is told by what the level did; a rise that neither
 * shakes the bucket nor takes it off is called a visit only by day and in dry weather, since snow
 * that lets go of the orifice makes one too.
 */
final class UnmarkedVisitCheck implements Check {

  /** The bucket has been off when the level fell so far below that before [mm]; own choice. */
  private static final double LIFTED_MM = 10;

  /** Changes up to here are none [mm]; own choice, some tenths being usual after a visit. */
  private static final double SAME_MM = 1;

  /** An emptied bucket without charge reads less than this [mm]; own choice. */
  private static final double EMPTIED_MM = 10;

  /** The largest rise that is called oil [mm]: 0.16 L over 200 cm²; own choice. */
  private static final double MOST_OIL_MM = 8;

  /** A bucket off its wires leaves less than this share of the depth; own choice. */
  private static final double OFF = 0.3;

  /** Share of the readings that are off by which all wires have to be off alike; own choice. */
  private static final double ALIKE = 0.5;

  private static final long LONGEST_SHAKE_MS = 4 * 3_600_000;
  private static final long LONGEST_MS = 7 * 86_400_000L;

  /** Nobody hangs a bucket off and on in less, margins included [ms]; own choice. */
  private static final long LEAST_OFF_MS = 15 * 60_000;

  private static final int LEAST_SHAKES = 3;
  private static final int FIRST_HOUR = 6;
  private static final int LAST_HOUR = 20;
  private static final double DRY_MM = 0.5;
  private static final double NOISE_STEPS = 3;
  private static final long BESIDE_MS = 30 * 60_000;

  @Override
  public FindingKind kind() {
    return FindingKind.UNMARKED_VISIT;
  }

  @Override
  public String method() {
    return "Steps that all wires make alike and no weather does: falls of more than 1.5 mm (more for"
        + " readings far apart) and rises of more than 5 mm faster than 25 mm in 5 min (the limit"
        + " of Baker et al. 2005, NOAA Technical Note NCDC USCRN-05-1), both more than eight times"
        + " the usual step of the hours around (own choice). They count as a visit when the bucket"
        + " came off, the level changed for good, or it was shaken by daylight; what was done is"
        + " read from the levels before and after (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    SeasonRecord record = scene.record();
    if (scene.depths().wires() < 2 || record.size() < 2) {
      return List.of();
    }
    CommonSteps steps = CommonSteps.of(scene);
    List<Finding> findings = new ArrayList<>();
    for (Disturbance what : Disturbances.in(steps, record)) {
      Interval span = what.span(record);
      boolean told =
          what.changeMm().isPresent() && span.lengthMs() <= LONGEST_MS && !struck(steps, what);
      if (told && isVisit(scene, steps, what) && !scene.explained(span) && !slid(scene, what)) {
        findings.add(finding(scene, what, span));
      }
    }
    return findings;
  }

  /** Much snow that slides in at once looks as if it was poured in. */
  private static boolean slid(Scene scene, Disturbance what) {
    return what.falls() == 0 && new CappingCheck().slidIn(scene, what.span(scene.record()));
  }

  private static boolean isVisit(Scene scene, CommonSteps steps, Disturbance what) {
    SeasonRecord record = scene.record();
    double change = what.changeMm().orElseThrow();
    boolean byDay = byDay(record.stampMs(what.firstRow()), scene.sheet().utcOffset());
    int rows = what.endRow() - what.firstRow();
    if (lifted(what)) {
      // One or two readings that fall and come back are a disturbed logger, or spikes that met.
      boolean off = what.lowestMm() < Math.max(Disturbances.EMPTY_MM, OFF * what.fromMm());
      boolean some = what.falls() + what.rises() > 2 || rows > 8;
      boolean lasts = what.span(record).lengthMs() >= LEAST_OFF_MS;
      return some || lasts && off || Math.abs(change) > SAME_MM;
    }
    if (what.falls() == 0) {
      return byDay && change > SAME_MM && dryBeside(steps, record, what);
    }
    if (change < -SAME_MM - SAME_MM) {
      return true;
    }
    boolean shaken = what.falls() + what.rises() >= LEAST_SHAKES || change > SAME_MM;
    return shaken && byDay && what.span(record).lengthMs() <= LONGEST_SHAKE_MS;
  }

  /**
   * Whether readings are struck rather than the bucket: nothing has changed after it, and while it
   * lasts the wires are off by different amounts, one reading right and the next not.
   */
  private static boolean struck(CommonSteps steps, Disturbance what) {
    return Math.abs(what.changeMm().orElseThrow()) <= SAME_MM && what.alike(steps) < ALIKE;
  }

  private static boolean lifted(Disturbance what) {
    return what.lowestMm() < Math.min(what.fromMm(), what.toMm()) - LIFTED_MM;
  }

  /** By the clock, since a place may have no longitude. */
  private static boolean byDay(long epochMs, ZoneOffset offset) {
    int hour = Instant.ofEpochMilli(epochMs).atOffset(offset).getHour();
    return hour >= FIRST_HOUR && hour < LAST_HOUR;
  }

  private static boolean dryBeside(CommonSteps steps, SeasonRecord record, Disturbance what) {
    double before = 0;
    for (int row = what.firstRow();
        row > 0 && record.stampMs(row) > record.stampMs(what.firstRow()) - BESIDE_MS;
        row--) {
      before += Double.isNaN(steps.stepMm(row)) ? 0 : steps.stepMm(row);
    }
    double after = 0;
    int end = Math.min(what.endRow(), record.size() - 1);
    for (int row = end + 1;
        row < record.size() && record.stampMs(row) < record.stampMs(end) + BESIDE_MS;
        row++) {
      after += Double.isNaN(steps.stepMm(row)) ? 0 : steps.stepMm(row);
    }
    double dry = Math.max(DRY_MM, NOISE_STEPS * steps.usualStepMm(what.firstRow()));
    return Math.abs(before) < dry && Math.abs(after) < dry;
  }

  private Finding finding(Scene scene, Disturbance what, Interval span) {
    double change = what.changeMm().orElseThrow();
    List<VisitAction> actions = actions(what);
    String off =
        lifted(what)
            ? Words.text("went down to %.0f mm in between", what.lowestMm())
            : what.falls() == 0 ? "rose at once" : "shook in between";
    String reason =
        Words.text(
            "All wires alike: the level was %.1f mm before and %.1f mm after (%+.1f mm), and %s"
                + " within %s, which no weather does.",
            what.fromMm(), what.toMm(), change, off, Wording.duration(span.lengthMs()));
    boolean plain = lifted(what) || Math.abs(change) > MOST_OIL_MM && what.falls() > 0;
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        plain ? 0.95 : 0.7,
        Proposals.visit(span, actions, note(scene, what, actions)));
  }

  private static List<VisitAction> actions(Disturbance what) {
    double change = what.changeMm().orElseThrow();
    if (change < -MOST_OIL_MM) {
      return what.toMm() > EMPTIED_MM
          ? List.of(VisitAction.EMPTIED, VisitAction.RECHARGED)
          : List.of(VisitAction.EMPTIED);
    }
    if (change <= SAME_MM) {
      return List.of(VisitAction.INSPECTED);
    }
    return List.of(change <= MOST_OIL_MM ? VisitAction.OIL_ADDED : VisitAction.ANTIFREEZE_ADDED);
  }

  private static String note(Scene scene, Disturbance what, List<VisitAction> actions) {
    double areaCm2 = scene.sheet().gauge().orificeAreaCm2();
    double change = what.changeMm().orElseThrow();
    if (actions.contains(VisitAction.RECHARGED)) {
      return Words.text(
          "Emptied, it seems, of at least %.1f L of water; charged to %.0f mm, which is %.2f L of"
              + " water over %.0f cm².",
          litres(-change, areaCm2), what.toMm(), litres(what.toMm(), areaCm2), areaCm2);
    }
    if (actions.contains(VisitAction.INSPECTED)) {
      return Words.text("Bucket moved, it seems; the level changed by %+.1f mm.", change);
    }
    String done = actions.contains(VisitAction.EMPTIED) ? "taken out" : "poured in";
    return Words.text(
        "%.1f mm %s, it seems, which is %.2f L of water over %.0f cm².",
        Math.abs(change), done, litres(Math.abs(change), areaCm2), areaCm2);
  }

  private static double litres(double mm, double areaCm2) {
    return mm / 10 * areaCm2 / 1000;
  }
}
