package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.findings.Fillings.Filling;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * A bucket that was nearly full, or will be within a week at the rate the season filled it: it
 * should be emptied. Totals stand.
 */
final class NearCapacityCheck implements Check {

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = 24 * HOUR_MS;

  /** Share of the capacity that is nearly full; own choice. */
  private static final double NEARLY = 0.9;

  /** Ahead of the record's end [d]; own choice. */
  private static final double DAYS_AHEAD = 7;

  /** A rate needs a record of this length [d]; own choice. */
  private static final double LEAST_DAYS = 14;

  @Override
  public FindingKind kind() {
    return FindingKind.NEAR_CAPACITY;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "The highest hourly median level of each filling against 90 % of the bucket's capacity;"
        + " at the end of the record the level a week ahead too, at the mean rate since the bucket"
        + " was last emptied (own choice); needs the capacity in the station sheet.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    List<Finding> findings = new ArrayList<>();
    List<Filling> fillings = Fillings.of(scene.blocks());
    scene
        .sheet()
        .gauge()
        .capacityMm()
        .ifPresent(
            capacity -> {
              for (Filling filling : fillings) {
                boolean last = filling.equals(fillings.get(fillings.size() - 1));
                add(findings, scene, filling, last ? capacity : -capacity);
              }
            });
    return findings;
  }

  private void add(List<Finding> findings, Scene scene, Filling filling, double signedCapacity) {
    double capacityMm = Math.abs(signedCapacity);
    Blocks blocks = scene.blocks();
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    double topMm = Fillings.topMm(blocks, filling, hour);
    boolean high = topMm >= NEARLY * capacityMm;
    double endMm = Fillings.medianMm(blocks, filling.to() - hour, filling.to());
    double perDayMm = perDayMm(blocks, filling, hour);
    boolean soon = signedCapacity > 0 && endMm + DAYS_AHEAD * perDayMm >= capacityMm;
    Interval all = blocks.span(filling.from(), filling.to());
    boolean full =
        scene.found().stream()
            .anyMatch(f -> f.kind() == FindingKind.OVERFLOW && f.span().overlaps(all));
    if (!(high || soon) || full) {
      return;
    }
    int from = filling.from();
    while (high && from < filling.to() && !(blocks.levelMm(from) >= NEARLY * capacityMm)) {
      from++;
    }
    Interval span =
        high
            ? blocks.span(Math.min(from, filling.to() - 1), filling.to())
            : new Interval(Math.max(all.fromMs(), all.toMs() - DAY_MS), all.toMs());
    // Emptied, or marked as full, within a day: somebody has seen to it.
    Interval after = new Interval(span.fromMs(), span.toMs() + DAY_MS);
    if (!scene.explainedInPart(after)) {
      findings.add(finding(span, topMm, capacityMm, soon ? perDayMm : Double.NaN));
    }
  }

  /** Mean rise of the filling [mm/d]; NaN when it is short. */
  private static double perDayMm(Blocks blocks, Filling filling, int hour) {
    double days = (filling.to() - filling.from()) * (double) blocks.lengthMs() / DAY_MS;
    double risenMm =
        Fillings.medianMm(blocks, filling.to() - hour, filling.to())
            - Fillings.medianMm(blocks, filling.from(), filling.from() + hour);
    return days < LEAST_DAYS ? Double.NaN : risenMm / days;
  }

  private Finding finding(Interval span, double topMm, double capacityMm, double perDayMm) {
    String ahead =
        Double.isFinite(perDayMm)
            ? Words.text(" At %.1f mm a day it is full within a week.", perDayMm)
            : "";
    String reason =
        Words.text(
            "The level came up to %.0f mm, %.0f %% of the %.0f mm the bucket holds.%s",
            topMm, 100 * topMm / capacityMm, capacityMm, ahead);
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        Math.min(1, Math.max(0, topMm / capacityMm - 0.5)),
        Proposals.remark(span, "The bucket was nearly full."));
  }
}
