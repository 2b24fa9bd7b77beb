package org.rimebook.totals;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;
import org.rimebook.station.Interval;

/** Which totals findings put in doubt. */
final class Doubts {

  /** By the start of what they doubt. */
  private final List<Finding> doubting;

  Doubts(Findings findings) {
    this.doubting =
        findings.open().stream()
            .filter(finding -> finding.doubted().isPresent())
            .sorted(Comparator.comparingLong(finding -> doubted(finding).fromMs()))
            .toList();
  }

  private static Interval doubted(Finding finding) {
    return finding.doubted().orElseThrow();
  }

  /** Reasons to doubt what fell in [from, to); none when nothing does. */
  Set<Reason> of(long fromMs, long toMs) {
    Interval span = new Interval(fromMs, toMs);
    Set<Reason> reasons = EnumSet.noneOf(Reason.class);
    for (Finding finding : doubting) {
      if (doubted(finding).fromMs() >= toMs) {
        break;
      }
      if (doubted(finding).overlaps(span)) {
        reasons.add(Reason.of(finding.kind()));
      }
    }
    return reasons;
  }
}
