package org.rimebook.notebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.rimebook.station.Interval;

/**
 * Where two notebooks of one season differ. Compared is what counts and what it says: neither ids,
 * nor who wrote when, nor notes beside an entry that has an effect, nor sign-offs.
 */
public final class NotebookComparison {

  private final Set<String> allWires;
  private final List<Entry> mine;
  private final List<Entry> theirs;
  private final List<EntryDifference> differences = new ArrayList<>();

  private NotebookComparison(Notebook mine, Notebook theirs, Collection<String> wires) {
    this.allWires = Set.copyOf(wires);
    this.mine = counting(mine);
    this.theirs = counting(theirs);
  }

  /**
   * The differences in order of time, those without a span last.
   *
   * @param mine the first notebook
   * @param theirs the other notebook
   * @param wires names of all wires of the station, which an entry about all may list or not
   */
  public static List<EntryDifference> of(Notebook mine, Notebook theirs, Collection<String> wires) {
    return new NotebookComparison(mine, theirs, wires).differences();
  }

  private static List<Entry> counting(Notebook notebook) {
    List<Entry> counting = new ArrayList<>(notebook.inForce());
    counting.removeIf(entry -> entry instanceof Entry.SignOff);
    return counting;
  }

  private List<EntryDifference> differences() {
    pair((a, b) -> a.span().equals(b.span()) && meaning(a).equals(meaning(b)), Optional.empty());
    pair(
        (a, b) -> a.span().isPresent() && a.span().equals(b.span()),
        Optional.of(EntryDifference.Kind.OTHER_MEANING));
    pair(
        (a, b) -> a.kind().equals(b.kind()) && overlap(a.span(), b.span()),
        Optional.of(EntryDifference.Kind.OTHER_SPAN));
    for (Entry entry : mine) {
      add(EntryDifference.Kind.ONLY_MINE, Optional.of(entry), Optional.empty());
    }
    for (Entry entry : theirs) {
      add(EntryDifference.Kind.ONLY_THEIRS, Optional.empty(), Optional.of(entry));
    }
    differences.sort(
        Comparator.comparingLong(d -> d.span().map(Interval::fromMs).orElse(Long.MAX_VALUE)));
    return List.copyOf(differences);
  }

  /** Takes pairs out of both lists; one without a kind is none of the differences. */
  private void pair(BiPredicate<Entry, Entry> belong, Optional<EntryDifference.Kind> kind) {
    for (Iterator<Entry> left = mine.iterator(); left.hasNext(); ) {
      Entry own = left.next();
      Optional<Entry> other = theirs.stream().filter(t -> belong.test(own, t)).findFirst();
      if (other.isPresent()) {
        left.remove();
        theirs.remove(other.get());
        kind.ifPresent(k -> add(k, Optional.of(own), other));
      }
    }
  }

  private void add(EntryDifference.Kind kind, Optional<Entry> own, Optional<Entry> other) {
    differences.add(new EntryDifference(kind, own, other));
  }

  private static boolean overlap(Optional<Interval> a, Optional<Interval> b) {
    return a.isPresent() && b.isPresent() && a.get().overlaps(b.get());
  }

  /** What an entry says but for its span. */
  private List<Object> meaning(Entry entry) {
    if (entry instanceof Entry.ServiceVisit e) {
      return List.of(e.kind(), Set.copyOf(e.actions()), e.antifreezeL(), e.oilL());
    } else if (entry instanceof Entry.BadInterval e) {
      return List.of(e.kind(), e.wires().isEmpty() ? allWires : e.wires(), e.reason());
    } else if (entry instanceof Entry.Estimate e) {
      return List.of(e.kind(), e.totalMm(), e.source());
    } else if (entry instanceof Entry.Dismissal e) {
      return List.of(e.kind(), e.finding());
    } else if (entry instanceof Entry.Remark || entry instanceof Entry.Unknown) {
      return List.of(entry.kind(), entry.header().note());
    }
    return List.of(entry.kind());
  }
}
