package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Interval;

/**
 * An entry as a span in the lane.
 *
 * @param entry the entry, or its draft
 * @param interval when
 * @param row its row from the top, from 0
 * @param drafted whether it isn't in the notebook yet
 */
public record LaneSpan(Entry entry, Interval interval, int row, boolean drafted) {

  /** The most rows there are; more at one time lie over each other in the last. */
  public static final int MOST_ROWS = 4;

  /** Whether readings are left out in it. */
  public boolean leavesOut() {
    return entry instanceof Entry.BadInterval || entry instanceof Entry.ServiceVisit;
  }

  /**
   * The entries that count and are about a span, in rows where they overlap. A draft stands in
   * place of the entry of the same id.
   *
   * @param shortestMs what is shorter takes up as much [ms]
   */
  public static List<LaneSpan> of(Notebook notebook, List<Entry> drafts, long shortestMs) {
    Set<String> drafted = new HashSet<>();
    drafts.forEach(draft -> drafted.add(draft.header().id()));
    List<Entry> shown = new ArrayList<>(notebook.inForce());
    shown.removeIf(entry -> drafted.contains(entry.header().id()));
    shown.addAll(drafts);
    shown.removeIf(entry -> entry.span().isEmpty());
    shown.sort(Comparator.comparingLong(entry -> entry.span().orElseThrow().fromMs()));
    List<LaneSpan> spans = new ArrayList<>();
    long[] freeFrom = new long[MOST_ROWS];
    Arrays.fill(freeFrom, Long.MIN_VALUE);
    for (Entry entry : shown) {
      Interval interval = entry.span().orElseThrow();
      int row = row(freeFrom, interval.fromMs());
      long end = Math.max(interval.toMs(), interval.fromMs() + shortestMs);
      freeFrom[row] = Math.max(freeFrom[row], end);
      spans.add(new LaneSpan(entry, interval, row, drafted.contains(entry.header().id())));
    }
    return List.copyOf(spans);
  }

  private static int row(long[] freeFrom, long fromMs) {
    for (int row = 0; row < freeFrom.length; row++) {
      if (freeFrom[row] <= fromMs) {
        return row;
      }
    }
    return freeFrom.length - 1;
  }
}
