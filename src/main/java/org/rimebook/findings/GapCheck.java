package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.Robust;
import org.rimebook.notebook.BadReason;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

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

  /** The supply counts as sagging so far below its usual value [V]; own choice. */
  private static final double SAG_V = 0.5;

  private static final long BEFORE_MS = 3_600_000;
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
    OptionalDouble usualV = usualSupplyV(scene);
    Steps.longer(
        record,
        LEAST_INTERVALS,
        LEAST_MS,
        (row, usualMs) -> {
          Interval span = new Interval(record.stampMs(row - 1) + usualMs, record.stampMs(row));
          if (!scene.explained(span)
              && !scene.found(FindingKind.UNMARKED_VISIT, span)
              && !ClockSteps.named(scene, record.stampMs(row - 1), record.stampMs(row))) {
            findings.add(finding(scene, row, span, usualV));
          }
        });
    return findings;
  }

  private Finding finding(Scene scene, int row, Interval span, OptionalDouble usualV) {
    OptionalDouble riseMm = riseMm(scene.level(), row);
    OptionalDouble lastV = supplyV(scene, row);
    boolean sagged =
        usualV.isPresent()
            && lastV.isPresent()
            && lastV.getAsDouble() < usualV.getAsDouble() - SAG_V;
    String across =
        riseMm.isEmpty()
            ? "The levels before and after don't compare."
            : "The level "
                + Wording.changed(riseMm.getAsDouble())
                + " across it; when isn't known.";
    String supply =
        sagged
            ? Wording.text(
                " The supply had fallen to %.1f V, %.1f V being usual.",
                lastV.getAsDouble(), usualV.getAsDouble())
            : "";
    String reason = "No readings for " + Wording.duration(span.lengthMs()) + ". " + across + supply;
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

  private static OptionalDouble usualSupplyV(Scene scene) {
    double[] known =
        Arrays.stream(scene.blocks().channel(Channel.SUPPLY_VOLTAGE))
            .filter(Double::isFinite)
            .toArray();
    return known.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(Robust.medianInPlace(known, known.length));
  }

  /** Mean supply voltage in the hour before a row [V]. */
  private static OptionalDouble supplyV(Scene scene, int row) {
    Blocks blocks = scene.blocks();
    double[] all = blocks.channel(Channel.SUPPLY_VOLTAGE);
    int last = blocks.at(scene.record().stampMs(row - 1) - 1);
    int from = Math.max(0, last - (int) (BEFORE_MS / blocks.lengthMs()));
    return all.length == 0
        ? OptionalDouble.empty()
        : Arrays.stream(all, from, last + 1).filter(Double::isFinite).average();
  }
}
