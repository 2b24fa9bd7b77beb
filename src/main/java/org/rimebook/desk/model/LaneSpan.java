package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Interval;

/**
 * An entry, or a finding, as a span in the lane.
 *
 * @param entry the entry, its draft, or what the finding proposes
 * @param interval when
 * @param row its row from the top, from 0
 * @param drafted whether it isn't in the notebook yet
 * @param finding the finding; empty for an entry
 */
public record LaneSpan(
    Entry entry, Interval interval, int row, boolean drafted, Optional<Finding> finding) {

  /** The most rows there are; more at one time lie over each other in the last. */
  public static final int MOST_ROWS = 4;

  private LaneSpan(Entry entry, Interval interval, boolean drafted) {
    this(entry, interval, 0, drafted, Optional.empty());
  }

  private LaneSpan(Finding finding) {
    this(finding.proposal(), finding.span(), 0, false, Optional.of(finding));
  }

  private LaneSpan in(int otherRow) {
    return new LaneSpan(entry, interval, otherRow, drafted, finding);
  }

  /** Whether readings are left out in it. */
  public boolean leavesOut() {
    return finding.isEmpty() && isLeftOut();
  }

  private boolean isLeftOut() {
    return entry instanceof Entry.BadInterval || entry instanceof Entry.ServiceVisit;
  }

  /** Its word in the lane. */
  public String word() {
    return finding.map(FindingWords::kind).orElseGet(() -> EntryWords.kind(entry));
  }

  /**
   * The entries that count and are about a span, and findings, in rows where they overlap. A draft
   * stands in place of the entry of the same id.
   *
   * @param findings findings that nothing is drafted for
   * @param shortestMs what is shorter takes up as much [ms]
   */
  public static List<LaneSpan> of(
      Notebook notebook, List<Entry> drafts, List<Finding> findings, long shortestMs) {
    Set<String> drafted = new HashSet<>();
    drafts.forEach(draft -> drafted.add(draft.header().id()));
    List<LaneSpan> unplaced = new ArrayList<>();
    for (Entry entry : notebook.inForce()) {
      if (!drafted.contains(entry.header().id())) {
        entry.span().ifPresent(span -> unplaced.add(new LaneSpan(entry, span, false)));
      }
    }
    for (Entry draft : drafts) {
      draft.span().ifPresent(span -> unplaced.add(new LaneSpan(draft, span, true)));
    }
    findings.forEach(finding -> unplaced.add(new LaneSpan(finding)));
    unplaced.sort(Comparator.comparingLong(span -> span.interval().fromMs()));
    return placed(unplaced, shortestMs);
  }

  private static List<LaneSpan> placed(List<LaneSpan> unplaced, long shortestMs) {
    List<LaneSpan> spans = new ArrayList<>();
    long[] freeFrom = new long[MOST_ROWS];
    Arrays.fill(freeFrom, Long.MIN_VALUE);
    for (LaneSpan span : unplaced) {
      Interval interval = span.interval();
      int row = row(freeFrom, interval.fromMs());
      long end = Math.max(interval.toMs(), interval.fromMs() + shortestMs);
      freeFrom[row] = Math.max(freeFrom[row], end);
      spans.add(span.in(row));
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
