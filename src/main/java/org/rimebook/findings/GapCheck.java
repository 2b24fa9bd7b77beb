package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.Robust;
import org.rimebook.notebook.BadReason;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Gaps in the record, with what the bucket gained across each. The totals across a gap stand as
 * they are, since the bucket keeps its water; what is asked for is why the logger was silent.
 */
final class GapCheck implements Check {

  /** A gap is at least this long [ms], and at least so many sampling intervals; own choice. */
  private static final long LEAST_MS = 15 * 60_000;

  private static final int LEAST_INTERVALS = 4;

  /** Levels on each side that the change across the gap is taken from; own choice. */
  private static final int SIDE = 11;

  private static final double DAY_MS = 86_400_000;

  @Override
  public FindingKind kind() {
    return FindingKind.GAP;
  }

  @Override
  public String method() {
    return "Stamps further apart than four sampling intervals and 15 min (own choice); the level"
        + " before and after from medians of 11 readings; the supply voltage in the last hour"
        + " against its median.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    List<Finding> findings = new ArrayList<>();
    SeasonRecord record = scene.record();
    Supply supply = Supply.of(scene);
    Steps.longer(
        record,
        LEAST_INTERVALS,
        LEAST_MS,
        (row, usualMs) -> {
          Interval span = new Interval(record.stampMs(row - 1) + usualMs, record.stampMs(row));
          if (!scene.explained(span)
              && !scene.found(FindingKind.UNMARKED_VISIT, span)
              && !ClockSteps.named(scene, record.stampMs(row - 1), record.stampMs(row))) {
            findings.add(finding(scene, row, span, supply));
          }
        });
    return findings;
  }

  private Finding finding(Scene scene, int row, Interval span, Supply supply) {
    OptionalDouble riseMm = riseMm(scene.level(), row);
    long lastMs = scene.record().stampMs(row - 1);
    boolean sagged = supply.saggedBefore(lastMs);
    String across =
        riseMm.isEmpty()
            ? "The levels before and after don't compare."
            : "The level "
                + Wording.changed(riseMm.getAsDouble())
                + " across it; when isn't known.";
    String power =
        sagged
            ? Words.text(
                " The supply had fallen to %.1f V, %.1f V being usual.",
                supply.beforeV(lastMs), supply.usualV())
            : "";
    String reason = "No readings for " + Wording.duration(span.lengthMs()) + ". " + across + power;
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        Math.min(1, 0.3 + 0.7 * span.lengthMs() / (2 * DAY_MS)),
        Proposals.bad(
            span, List.of(), sagged ? BadReason.POWER : BadReason.LOGGER, "No readings."));
  }

  /** What the level gained from before a row to it [mm]; empty where it doesn't compare. */
  private static OptionalDouble riseMm(LevelSeries level, int row) {
    int after = level.indexAtOrAfter(row);
    if (after == 0 || after == level.size() || level.segment(after) != level.segment(after - 1)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        medianMm(level, after, Math.min(level.size(), after + SIDE))
            - medianMm(level, Math.max(0, after - SIDE), after));
  }

  private static double medianMm(LevelSeries level, int from, int to) {
    double[] values = new double[to - from];
    Arrays.setAll(values, i -> level.levelMm(from + i));
    return Robust.medianInPlace(values, values.length);
  }
}
