package org.rimebook.desk.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.station.Interval;

/**
 * An edge of an entry being dragged: it snaps to readings, and the draft, and so the totals, follow
 * at each move. Released, it is written as one step; given up, nothing is.
 */
public final class EdgeDrag {

  /** Which edge. */
  public enum Edge {
    START,
    END
  }

  private final Marking marking;
  private Optional<Entry> dragged = Optional.empty();
  private Edge edge = Edge.START;

  /**
   * @param marking writes what comes of it
   */
  public EdgeDrag(Marking marking) {
    this.marking = marking;
  }

  /** Takes hold of an edge of an entry about a span; nothing for another. */
  public void grip(Entry entry, Edge which) {
    if (entry.span().isPresent()) {
      dragged = Optional.of(entry);
      edge = which;
      marking.choose(entry);
    }
  }

  /** Whether an edge is held. */
  public boolean underWay() {
    return dragged.isPresent();
  }

  /** Moves the edge to the reading nearest to an instant; one reading stays inside. */
  public void to(long epochMs) {
    if (dragged.isPresent() && marking.snap().isPresent()) {
      Interval before = dragged.get().span().orElseThrow();
      ReadingSnap snap = marking.snap().get();
      Interval moved =
          edge == Edge.START ? snap.withStart(before, epochMs) : snap.withEnd(before, epochMs);
      marking.workspace().draft().set(Optional.of(EntryCopy.with(dragged.get(), moved)));
      select(moved);
    }
  }

  /** Which edge is held, or was last. */
  public Edge edge() {
    return edge;
  }

  /** Where the edge held is now [ms since epoch]. */
  public OptionalLong edgeMs() {
    return span().stream().mapToLong(s -> edge == Edge.START ? s.fromMs() : s.toMs()).findFirst();
  }

  /** The span as it is now. */
  public Optional<Interval> span() {
    return dragged.flatMap(entry -> marking.workspace().draft().get().orElse(entry).span());
  }

  /** Lets go: writes the change, unless there is none; asks who writes where that isn't known. */
  public void release() {
    Optional<Entry> entry = dragged;
    Optional<Entry> changed = marking.workspace().draft().get();
    dragged = Optional.empty();
    if (entry.isEmpty() || changed.isEmpty() || changed.equals(entry)) {
      giveUp(entry);
    } else if (marking.unsigned()) {
      marking.change(entry.get());
      changed.get().span().ifPresent(this::select);
    } else if (marking.keeper().replace(entry.get().header().id(), changed.get())) {
      marking.chooseLast();
    } else {
      giveUp(entry);
    }
  }

  /** Lets go and leaves the entry as it was. */
  public void giveUp() {
    giveUp(dragged);
  }

  private void giveUp(Optional<Entry> entry) {
    dragged = Optional.empty();
    marking.workspace().draft().set(Optional.empty());
    entry.ifPresent(marking::choose);
  }

  private void select(Interval span) {
    Selection now = marking.workspace().selection().get();
    marking.workspace().selection().set(now.of(now.entry(), List.of(span)));
  }
}
