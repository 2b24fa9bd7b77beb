package org.rimebook.findings;

import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Interval;

/**
 * What the notebook has already decided. A finding is settled by a dismissal that names it, or
 * named it when it was found over nearly the same span; or by an entry of the kind it proposes over
 * most of its span. What was dismissed of some wires is dismissed of each of them. A remark settles
 * nothing by itself: accepting a finding that proposes one also dismisses it.
 */
public final class Settled {

  /** Share of the longer span that two have in common when they are the same; own choice. */
  private static final double SAME = 0.5;

  /** Share of a finding's span that an entry covers when it settles it; own choice. */
  private static final double COVERED = 0.5;

  private final List<Entry> entries;

  public Settled(Notebook notebook) {
    this.entries = notebook.inForce();
  }

  /** The findings nobody has decided on, in the same order. */
  public List<Finding> open(List<Finding> findings) {
    return findings.stream().filter(finding -> by(finding).isEmpty()).toList();
  }

  /** The entry that settles a finding; empty while nobody has decided. */
  public Optional<Entry> by(Finding finding) {
    return entries.stream().filter(entry -> settles(entry, finding)).findFirst();
  }

  /** Whether it dismisses anything of a kind. */
  boolean dismisses(FindingKind kind) {
    return entries.stream()
        .anyMatch(entry -> entry instanceof Entry.Dismissal said && names(said, kind));
  }

  private static boolean names(Entry.Dismissal dismissal, FindingKind kind) {
    return dismissal.finding().startsWith(kind.code() + "/");
  }

  private static boolean settles(Entry entry, Finding finding) {
    if (entry instanceof Entry.Dismissal dismissal) {
      return names(dismissal, finding.kind())
          && Named.of(dismissal.finding()).map(named -> named.means(finding)).orElse(false);
    }
    boolean sameKind = entry.kind().equals(finding.proposal().kind());
    return sameKind
        && !(entry instanceof Entry.Remark)
        && coversWires(entry, finding)
        && entry.span().map(span -> covers(span, finding.span())).orElse(false);
  }

  private static boolean coversWires(Entry entry, Finding finding) {
    return !(entry instanceof Entry.BadInterval bad)
        || bad.wires().isEmpty()
        || !finding.wires().isEmpty() && bad.wires().containsAll(finding.wires());
  }

  private static boolean covers(Interval entry, Interval finding) {
    return shared(entry, finding) >= COVERED * finding.lengthMs() && entry.overlaps(finding);
  }

  private static long shared(Interval one, Interval other) {
    return Math.max(0, Math.min(one.toMs(), other.toMs()) - Math.max(one.fromMs(), other.fromMs()));
  }

  /**
   * A finding as named in a dismissal.
   *
   * @param kind its kind
   * @param span its span
   * @param wires its wires, joined as in the name
   */
  private record Named(String kind, Interval span, String wires) {

    static Optional<Named> of(String id) {
      String[] parts = id.split("/", 4);
      if (parts.length < 3) {
        return Optional.empty();
      }
      return Instants.parse(parts[1])
          .flatMap(
              from ->
                  Instants.parse(parts[2])
                      .filter(to -> !to.isBefore(from))
                      .map(
                          to ->
                              new Named(
                                  parts[0],
                                  Interval.of(from, to),
                                  parts.length > 3 ? parts[3] : "")));
    }

    boolean means(Finding finding) {
      long longer = Math.max(span.lengthMs(), finding.span().lengthMs());
      boolean same =
          span.equals(finding.span())
              || longer > 0 && shared(span, finding.span()) >= SAME * longer;
      return kind.equals(finding.kind().code()) && namesAll(finding.wires()) && same;
    }

    private boolean namesAll(List<String> others) {
      return wires.equals(String.join("+", others))
          || !others.isEmpty() && List.of(wires.split("\\+")).containsAll(others);
    }
  }
}
