package org.rimebook.findings;

import java.util.List;
import java.util.Set;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/** What the notebook already says of how the level moved. */
final class Marked {

  private static final List<Class<? extends Entry.Spanning>> KINDS =
      List.of(Entry.LateCatch.class, Entry.Estimate.class, Entry.DrySpell.class);

  private Marked() {}

  /** Whether an entry tells of catch, or of none, in a span, or no reading counts in most of it. */
  static boolean in(Scene scene, Interval span) {
    return scene.explained(span)
        || KINDS.stream()
            .flatMap(kind -> scene.spans(kind).stream())
            .anyMatch(entry -> entry.overlaps(span));
  }

  /** Whether such entries take up at least half of a span. */
  static boolean inMost(Scene scene, Interval span) {
    long shared =
        KINDS.stream()
            .flatMap(kind -> scene.spans(kind).stream())
            .filter(span::overlaps)
            .mapToLong(e -> Math.min(e.toMs(), span.toMs()) - Math.max(e.fromMs(), span.fromMs()))
            .sum();
    return scene.explained(span) || 2 * shared >= span.lengthMs();
  }

  /** Whether one of some kinds was found that shares time with a span. */
  static boolean found(Scene scene, Set<FindingKind> kinds, Interval span) {
    return scene.found().stream()
        .anyMatch(finding -> kinds.contains(finding.kind()) && finding.span().overlaps(span));
  }
}
