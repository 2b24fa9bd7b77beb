package org.rimebook.accumulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Interval;

/** Settles the notebook's entries in force into rulings that don't overlap, ordered by time. */
public final class Rulings {

  private Rulings() {}

  /**
   * The rulings of a notebook. Where entries overlap the stronger kind holds and the weaker keeps
   * what is left of it; of two overlapping estimates the one written later holds whole.
   */
  public static List<Ruling> of(Notebook notebook) {
    List<Ruling> settled = new ArrayList<>();
    for (Ruling.Kind kind : Ruling.Kind.values()) {
      List<Ruling> ofKind = ofKind(notebook, kind);
      for (int i = ofKind.size() - 1; i >= 0; i--) {
        Ruling ruling = ofKind.get(i);
        boolean whole = kind == Ruling.Kind.ESTIMATE;
        if (whole && settled.stream().anyMatch(s -> s.interval().overlaps(ruling.interval()))) {
          continue;
        }
        settled.addAll(uncovered(ruling, settled));
      }
    }
    settled.sort(Comparator.comparingLong(r -> r.interval().fromMs()));
    return List.copyOf(settled);
  }

  /** Everything between the first and the last ruling that is in one list only. */
  public static Optional<Interval> difference(List<Ruling> some, List<Ruling> others) {
    List<Ruling> either = new ArrayList<>(some);
    either.removeAll(others);
    List<Ruling> rest = new ArrayList<>(others);
    rest.removeAll(some);
    either.addAll(rest);
    return either.stream()
        .map(Ruling::interval)
        .reduce(
            (a, b) -> new Interval(Math.min(a.fromMs(), b.fromMs()), Math.max(a.toMs(), b.toMs())));
  }

  /** Where entries contradict each other, in words: which holds and which has no effect there. */
  public static List<String> contradictions(Notebook notebook) {
    List<Entry> entries =
        notebook.inForce().stream().filter(entry -> ruling(entry).isPresent()).toList();
    List<String> words = new ArrayList<>();
    for (int later = 0; later < entries.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        contradiction(entries.get(earlier), entries.get(later)).ifPresent(words::add);
      }
    }
    return words;
  }

  private static Optional<String> contradiction(Entry earlier, Entry later) {
    Ruling first = ruling(earlier).orElseThrow();
    Ruling second = ruling(later).orElseThrow();
    boolean visit = first.kind() == Ruling.Kind.VISIT || second.kind() == Ruling.Kind.VISIT;
    boolean agree = first.kind() == second.kind() && first.kind() != Ruling.Kind.ESTIMATE;
    if (visit || agree || !first.interval().overlaps(second.interval())) {
      return Optional.empty();
    }
    boolean laterHolds = second.kind().compareTo(first.kind()) <= 0;
    Entry holds = laterHolds ? later : earlier;
    Entry yields = laterHolds ? earlier : later;
    return Optional.of(
        "entries \""
            + yields.header().id()
            + "\" ("
            + yields.kind()
            + ") and \""
            + holds.header().id()
            + "\" ("
            + holds.kind()
            + ") overlap and contradict each other; the second holds there. Withdraw one");
  }

  private static List<Ruling> ofKind(Notebook notebook, Ruling.Kind kind) {
    return notebook.inForce().stream()
        .map(Rulings::ruling)
        .flatMap(Optional::stream)
        .filter(r -> r.kind() == kind && r.interval().lengthMs() > 0)
        .toList();
  }

  private static Optional<Ruling> ruling(Entry entry) {
    if (entry instanceof Entry.Estimate e) {
      return Optional.of(new Ruling(Ruling.Kind.ESTIMATE, e.interval(), e.totalMm()));
    }
    if (entry instanceof Entry.ServiceVisit e) {
      return Optional.of(new Ruling(Ruling.Kind.VISIT, e.interval(), 0));
    }
    if (entry instanceof Entry.DrySpell e) {
      return Optional.of(new Ruling(Ruling.Kind.DRY, e.interval(), 0));
    }
    if (entry instanceof Entry.LateCatch e) {
      return Optional.of(new Ruling(Ruling.Kind.LATE, e.interval(), 0));
    }
    return Optional.empty();
  }

  private static List<Ruling> uncovered(Ruling ruling, List<Ruling> stronger) {
    List<Interval> left = List.of(ruling.interval());
    for (Ruling cover : stronger) {
      List<Interval> next = new ArrayList<>();
      for (Interval piece : left) {
        addUncovered(piece, cover.interval(), next);
      }
      left = next;
    }
    return left.stream().map(i -> new Ruling(ruling.kind(), i, ruling.givenMm())).toList();
  }

  private static void addUncovered(Interval piece, Interval cover, List<Interval> into) {
    if (!piece.overlaps(cover)) {
      into.add(piece);
      return;
    }
    if (piece.fromMs() < cover.fromMs()) {
      into.add(new Interval(piece.fromMs(), cover.fromMs()));
    }
    if (piece.toMs() > cover.toMs()) {
      into.add(new Interval(cover.toMs(), piece.toMs()));
    }
  }
}
