package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.findings.Fillings.Filling;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * A bucket that is full: the level comes up to what the sheet says the bucket holds and never gets
 * beyond it again. From then on nothing can be caught.
 */
final class OverflowCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** A full bucket is this close to its capacity, as a share of it; own choice. */
  private static final double FULL = 0.01;

  /** The level stays this close to its top [mm] and falls no further a day; own choice. */
  private static final double AT_TOP_MM = 0.5;

  private static final double PER_DAY_MM = 0.3;

  /** How long the level has to stand at its top; own choice. */
  private static final int LEAST_HOURS = 6;

  @Override
  public FindingKind kind() {
    return FindingKind.OVERFLOW;
  }

  @Override
  public String method() {
    return "Hourly median levels within 1 % of the bucket's capacity that rise to a top and stand"
        + " there for at least 6 h, none getting more than 0.5 mm beyond it until the bucket is"
        + " emptied (own choice); needs the capacity in the station sheet.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    List<Finding> findings = new ArrayList<>();
    scene
        .sheet()
        .gauge()
        .capacityMm()
        .ifPresent(
            capacity ->
                Fillings.of(scene.blocks())
                    .forEach(filling -> add(findings, scene, filling, capacity)));
    return findings;
  }

  private void add(List<Finding> findings, Scene scene, Filling filling, double capacityMm) {
    Blocks blocks = scene.blocks();
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    double topMm = Fillings.topMm(blocks, filling, hour);
    if (!(Math.abs(topMm - capacityMm) <= FULL * capacityMm)) {
      return;
    }
    int full = filling.from();
    while (full < filling.to() && !(blocks.levelMm(full) >= topMm - AT_TOP_MM)) {
      full++;
    }
    full = Math.min(full + hour, filling.to());
    Interval span = beforeVisit(scene, blocks.span(full, standsTo(blocks, full, filling)));
    boolean filled = full > filling.from() + 2 * hour;
    if (span.lengthMs() >= LEAST_HOURS * HOUR_MS && filled && !scene.explained(span)) {
      findings.add(finding(scene, span, topMm, capacityMm));
    }
  }

  /** A span up to an hour before the visit it runs into, which tells the level that visit found. */
  private static Interval beforeVisit(Scene scene, Interval span) {
    return scene.spans(Entry.ServiceVisit.class).stream()
        .filter(visit -> visit.fromMs() > span.fromMs() && visit.fromMs() < span.toMs())
        .findFirst()
        .map(
            visit -> new Interval(span.fromMs(), Math.max(span.fromMs(), visit.fromMs() - HOUR_MS)))
        .orElse(span);
  }

  /** The block up to which the level stands where it got full, but for a little that evaporates. */
  private static int standsTo(Blocks blocks, int full, Filling filling) {
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    double fullMm = Fillings.medianMm(blocks, full, full + hour);
    int to = full;
    for (int block = full; block < filling.to(); block += hour) {
      double days = (block - full) * (double) blocks.lengthMs() / (24 * HOUR_MS);
      double mm = Fillings.medianMm(blocks, block, Math.min(filling.to(), block + hour));
      if (Math.abs(mm - fullMm) > 2 * AT_TOP_MM + PER_DAY_MM * days) {
        return to;
      }
      to = Math.min(filling.to(), block + hour);
    }
    return to;
  }

  private Finding finding(Scene scene, Interval span, double topMm, double capacityMm) {
    String reason =
        Words.text(
            "The level came up to %.1f mm, the bucket holding %.0f mm, and stood there for %s until"
                + " %s. Nothing more could be caught.",
            topMm,
            capacityMm,
            Wording.duration(span.lengthMs()),
            Wording.time(span.toMs(), scene.sheet().utcOffset()));
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        1 - Math.min(0.5, 50 * Math.abs(topMm / capacityMm - 1)),
        Proposals.bad(span, List.of(), BadReason.OTHER, "The bucket was full."));
  }
}
