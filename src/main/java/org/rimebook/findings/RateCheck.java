package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.depth.LevelSeries;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Catch faster than any rain, and not by somebody at the gauge. */
final class RateCheck implements Check {

  /** Most that falls in five minutes [mm] (Baker et al. 2005). */
  private static final double MOST_MM = 25;

  private static final long FIVE_MINUTES_MS = 300_000;
  private static final double STRONG = 0.8;

  /** A rise that is gone this much later, by this share, was none; own choice. */
  private static final int LATER = 5;

  private static final double GONE = 0.5;

  @Override
  public FindingKind kind() {
    return FindingKind.RATE;
  }

  @Override
  public String method() {
    return "More than 25 mm in 5 min (Baker et al. 2005, NOAA Technical Note NCDC USCRN-05-1), or as"
        + " much between two readings further apart at the same rate, that stays and isn't a"
        + " service visit.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    SeasonRecord record = scene.record();
    LevelSeries level = scene.level();
    Once<CommonSteps> steps = new Once<>(() -> CommonSteps.of(scene));
    List<Finding> findings = new ArrayList<>();
    int from = 0;
    for (int to = 1; to < level.size(); to++) {
      long end = record.stampMs(level.row(to));
      while (from < to - 1 && end - record.stampMs(level.row(from)) > FIVE_MINUTES_MS) {
        from++;
      }
      if (level.segment(from) != level.segment(to)) {
        from = to;
        continue;
      }
      double rise = level.levelMm(to) - level.levelMm(from);
      long took = end - record.stampMs(level.row(from));
      double most = MOST_MM * Math.max(1, took / (double) FIVE_MINUTES_MS);
      if (rise > most
          && stays(level, from, to)
          && riseMm(steps.get(), level.row(from), level.row(to)) > most) {
        Interval span = new Interval(record.stampMs(level.row(from)), end + 1);
        if (!scene.explained(span) && !visited(scene, span)) {
          findings.add(finding(span, rise, took));
        }
        from = to;
      }
    }
    return findings;
  }

  /** What all wires rose by alike [mm]; a wire that jumps by itself is another matter. */
  private static double riseMm(CommonSteps steps, int fromRow, int toRow) {
    double rise = 0;
    for (int row = fromRow + 1; row <= toRow; row++) {
      rise += Double.isNaN(steps.stepMm(row)) ? 0 : steps.stepMm(row);
    }
    return rise;
  }

  private static boolean stays(LevelSeries level, int from, int to) {
    int later = Math.min(level.size() - 1, to + LATER);
    int earlier = Math.max(0, from - LATER);
    double rise = level.levelMm(to) - level.levelMm(from);
    return level.segment(later) == level.segment(to)
        && level.segment(earlier) == level.segment(from)
        && level.levelMm(later) - level.levelMm(earlier) > GONE * rise;
  }

  private static boolean visited(Scene scene, Interval span) {
    return scene.found().stream()
        .anyMatch(
            finding ->
                finding.kind() == FindingKind.UNMARKED_VISIT && finding.span().overlaps(span));
  }

  private Finding finding(Interval span, double riseMm, long tookMs) {
    String reason =
        Words.text(
            "The level rose by %.1f mm within %s; no rain brings more than 25 mm in 5 min.",
            riseMm, Wording.duration(tookMs));
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        STRONG,
        Proposals.remark(span, "Rose faster than rain: snow that slid in, or a hand?"));
  }
}
