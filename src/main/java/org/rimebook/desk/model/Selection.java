package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.rimebook.station.Interval;

/**
 * What is selected: stretches of time, wires, and perhaps one entry. All views show the same
 * selection.
 *
 * @param intervals stretches, ordered, not overlapping
 * @param wires names of the wires chosen; empty = all
 * @param entry id of the entry chosen; empty text when none
 */
public record Selection(List<Interval> intervals, Set<String> wires, String entry) {

  /** Nothing selected. */
  public static final Selection NONE = new Selection(List.of(), Set.of(), "");

  public Selection {
    intervals = merged(intervals);
    wires = Set.copyOf(wires);
  }

  /** Whether nothing at all is selected or chosen. */
  public boolean isNone() {
    return intervals.isEmpty() && wires.isEmpty() && entry.isEmpty();
  }

  /** With one stretch of time instead of those selected. */
  public Selection only(Interval interval) {
    return new Selection(List.of(interval), wires, "");
  }

  /** With these stretches instead. */
  public Selection with(List<Interval> stretches) {
    return new Selection(stretches, wires, "");
  }

  /** With one more stretch. */
  public Selection and(Interval interval) {
    List<Interval> all = new ArrayList<>(intervals);
    all.add(interval);
    return new Selection(all, wires, "");
  }

  /** With a wire chosen that wasn't, or the other way round. */
  public Selection toggled(String wire) {
    List<String> chosen = new ArrayList<>(wires);
    if (!chosen.remove(wire)) {
      chosen.add(wire);
    }
    return new Selection(intervals, Set.copyOf(chosen), entry);
  }

  /** With one entry chosen and the stretch it is about. */
  public Selection of(String id, List<Interval> about) {
    return new Selection(about, wires, id);
  }

  /** Whether an instant lies in a selected stretch. */
  public boolean holds(long epochMs) {
    return intervals.stream().anyMatch(i -> i.contains(epochMs));
  }

  private static List<Interval> merged(List<Interval> stretches) {
    List<Interval> ordered = new ArrayList<>(stretches);
    ordered.sort(Comparator.comparingLong(Interval::fromMs));
    List<Interval> apart = new ArrayList<>();
    for (Interval next : ordered) {
      int last = apart.size() - 1;
      if (last >= 0 && next.fromMs() <= apart.get(last).toMs()) {
        Interval before = apart.get(last);
        apart.set(last, new Interval(before.fromMs(), Math.max(before.toMs(), next.toMs())));
      } else {
        apart.add(next);
      }
    }
    return List.copyOf(apart);
  }
}
