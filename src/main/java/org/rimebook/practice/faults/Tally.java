package org.rimebook.practice.faults;

import java.util.Collection;
import java.util.List;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.bench.Planted;
import org.rimebook.station.Interval;

/**
 * How well one check did.
 *
 * @param due faults that had to be found
 * @param found those of them that were
 * @param right findings that belong to one of these
 * @param doubtful findings that belong only to what needn't be found: too small a fault, or what
 *     looks like one
 * @param wrong findings that belong to nothing
 */
public record Tally(int due, int found, int right, int doubtful, int wrong) {

  /** Nothing to find and nothing found. */
  public static final Tally NONE = new Tally(0, 0, 0, 0, 0);

  /** Ends and starts may be off by this much without being wrong [ms]. */
  private static final long MARGIN_MS = 1_800_000;

  /** Share of a fault, or of a finding, that the other has to cover. */
  private static final double SHARED = 0.3;

  /** How the findings of a kind compare with what was planted. */
  static Tally of(FindingKind kind, Collection<Planted> planted, Collection<Finding> findings) {
    List<Planted> faults = planted.stream().filter(p -> p.kind() == kind).toList();
    List<Finding> raised = findings.stream().filter(f -> f.kind() == kind).toList();
    List<Planted> due = faults.stream().filter(Planted::due).toList();
    int found = due.size() - missed(due, raised).size();
    int right = belonging(raised, due);
    int known = belonging(raised, faults);
    return new Tally(due.size(), found, right, known - right, raised.size() - known);
  }

  /** Faults that had to be found, and no finding is about. */
  static List<Planted> missed(Collection<Planted> planted, Collection<Finding> findings) {
    return planted.stream()
        .filter(Planted::due)
        .filter(p -> findings.stream().noneMatch(f -> f.kind() == p.kind() && belongs(f, p)))
        .toList();
  }

  private static int belonging(List<Finding> findings, List<Planted> faults) {
    return (int)
        findings.stream().filter(f -> faults.stream().anyMatch(p -> belongs(f, p))).count();
  }

  /** Whether a finding is about a fault: the wires have one in common and the spans belong. */
  private static boolean belongs(Finding finding, Planted planted) {
    boolean anyWire = planted.wires().isEmpty() || finding.wires().isEmpty();
    boolean sameWire = anyWire || finding.wires().stream().anyMatch(planted.wires()::contains);
    Interval wide =
        new Interval(planted.span().fromMs() - MARGIN_MS, planted.span().toMs() + MARGIN_MS);
    long shared =
        Math.min(wide.toMs(), finding.span().toMs())
            - Math.max(wide.fromMs(), finding.span().fromMs());
    boolean enough =
        shared >= SHARED * planted.span().lengthMs() || shared >= finding.span().lengthMs();
    return sameWire && shared > 0 && enough;
  }

  Tally plus(Tally other) {
    return new Tally(
        due + other.due,
        found + other.found,
        right + other.right,
        doubtful + other.doubtful,
        wrong + other.wrong);
  }

  /** Share of the faults that were found; NaN when there was none. */
  public double recall() {
    return due == 0 ? Double.NaN : (double) found / due;
  }

  /** Findings. */
  public int raised() {
    return right + doubtful + wrong;
  }

  /** Share of the findings that are right, the doubtful ones left out; NaN when there is none. */
  public double precision() {
    return right + wrong == 0 ? Double.NaN : (double) right / (right + wrong);
  }
}
