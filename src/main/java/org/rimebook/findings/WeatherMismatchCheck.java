package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.rimebook.findings.SteepRises.Rise;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Catch out of dry air: the level rises by millimetres while the air is far from saturated, which
 * no rain or snow leaves it. Only where humidity is measured.
 */
final class WeatherMismatchCheck implements Check {

  private static final long HOUR_MS = 3_600_000;

  /** Drier than that no rain or snow worth a millimetre leaves the air [%]; own choice. */
  private static final double DRY_PCT = 55;

  private static final double LEAST_MM = 2;

  @Override
  public FindingKind kind() {
    return FindingKind.WEATHER_MISMATCH;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "Rises of at least 2 mm within 90 min, after 4 h without any, in which relative humidity"
        + " stays below 55 % from half an hour before to an hour after (own choice); needs humidity"
        + " beside the wires.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    double[] percent = blocks.channel(Channel.RELATIVE_HUMIDITY);
    List<Finding> findings = new ArrayList<>();
    if (percent.length == 0) {
      return findings;
    }
    for (Rise rise : SteepRises.of(blocks, 4 * HOUR_MS)) {
      Interval span = blocks.span(rise.from(), rise.to());
      int before = blocks.at(span.fromMs() - HOUR_MS / 2);
      int after = blocks.at(span.toMs() + HOUR_MS) + 1;
      double mean = Means.of(percent, before, after);
      boolean dry = rise.mm() >= LEAST_MM && most(percent, before, after) < DRY_PCT;
      if (dry && !settled(scene, span)) {
        findings.add(finding(span, rise.mm(), mean));
      }
    }
    return findings;
  }

  /** The largest value; beyond any when one isn't known. */
  private static double most(double[] values, int from, int to) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = from; i < Math.min(values.length, to); i++) {
      most = Double.isFinite(values[i]) ? Math.max(most, values[i]) : Double.POSITIVE_INFINITY;
    }
    return from >= to ? Double.POSITIVE_INFINITY : most;
  }

  private static boolean settled(Scene scene, Interval span) {
    return Marked.in(scene, span)
        || Marked.found(scene, Set.of(FindingKind.CAPPING, FindingKind.UNMARKED_VISIT), span);
  }

  private Finding finding(Interval span, double mm, double percent) {
    String reason =
        Words.text(
            "The level rose by %.1f mm in %s at a relative humidity of %.0f %%. Neither rain nor"
                + " snow leaves the air that dry; a cap may have slid in or somebody was there.",
            mm, Wording.duration(span.lengthMs()), percent);
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        0.5,
        Proposals.remark(span, "Rose in dry air; not likely rain or snow."));
  }
}
