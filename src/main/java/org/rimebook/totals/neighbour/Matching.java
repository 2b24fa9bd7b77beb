package org.rimebook.totals.neighbour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimebook.station.Interval;

/**
 * Matches two lists of catches by start and end. Where one table has what accumulated over several
 * days and the other has each of them, the days are summed; what has no such counterpart is left
 * out.
 */
final class Matching {

  private final List<DayCatch> own;
  private final List<DayCatch> other;
  private final List<Pair> pairs = new ArrayList<>();
  private int i;
  private int j;

  private Matching(List<DayCatch> own, List<DayCatch> other) {
    this.own = inOrder(own);
    this.other = inOrder(other);
  }

  /** The pairs, in the order of time. */
  static List<Pair> of(List<DayCatch> own, List<DayCatch> other) {
    Matching matching = new Matching(own, other);
    matching.match();
    return List.copyOf(matching.pairs);
  }

  private static List<DayCatch> inOrder(List<DayCatch> days) {
    return days.stream()
        .filter(DayCatch::usable)
        .sorted(Comparator.comparingLong(day -> day.span().fromMs()))
        .toList();
  }

  private void match() {
    while (i < own.size() && j < other.size()) {
      long ownFrom = own.get(i).span().fromMs();
      long otherFrom = other.get(j).span().fromMs();
      if (ownFrom < otherFrom) {
        i++;
      } else if (otherFrom < ownFrom) {
        j++;
      } else {
        pair();
      }
    }
  }

  /** From a common start on to the next common end, if no day is missing up to there. */
  private void pair() {
    Run left = new Run(own, i);
    Run right = new Run(other, j);
    boolean whole = true;
    while (whole && left.toMs() != right.toMs()) {
      whole = left.toMs() < right.toMs() ? left.extend() : right.extend();
    }
    if (whole) {
      Interval span = new Interval(own.get(i).span().fromMs(), left.toMs());
      pairs.add(new Pair(span, left.sumMm, right.sumMm));
      i = left.last + 1;
      j = right.last + 1;
    } else {
      i++;
      j++;
    }
  }

  /** Catches that follow each other without a hole. */
  private static final class Run {

    private final List<DayCatch> days;
    private int last;
    private double sumMm;

    Run(List<DayCatch> days, int first) {
      this.days = days;
      this.last = first;
      this.sumMm = days.get(first).catchMm().orElseThrow();
    }

    long toMs() {
      return days.get(last).span().toMs();
    }

    boolean extend() {
      boolean follows = last + 1 < days.size() && days.get(last + 1).span().fromMs() == toMs();
      if (follows) {
        last++;
        sumMm += days.get(last).catchMm().orElseThrow();
      }
      return follows;
    }
  }
}
