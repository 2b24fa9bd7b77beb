package org.rimebook.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The stretches of a segment over which a wire's depth is known on one base, read or bridged, and
 * the holes between them.
 */
final class PresentRuns {

  private final int wire;
  private final int first;
  private final int last;
  private final TreeMap<Integer, Integer> lastByFirst = new TreeMap<>();

  /**
   * @param first first index of the segment
   * @param last last index of the segment
   */
  PresentRuns(int wire, int first, int last, UsableRows rows) {
    this.wire = wire;
    this.first = first;
    this.last = last;
    int start = -1;
    for (int i = first; i <= last; i++) {
      boolean used = rows.used(wire, i);
      boolean goesOn = start >= 0 && used && sameBase(rows, i);
      if (start >= 0 && !goesOn) {
        lastByFirst.put(start, i - 1);
        start = -1;
      }
      if (used && start < 0) {
        start = i;
      }
    }
    if (start >= 0) {
      lastByFirst.put(start, last);
    }
  }

  private boolean sameBase(UsableRows rows, int index) {
    return rows.calibration(wire, index - 1) == rows.calibration(wire, index);
  }

  /**
   * A stretch without the wire.
   *
   * @param wire the wire
   * @param first first index without it
   * @param last last index without it; {@code first - 1} where only the calibration changes
   */
  record Hole(int wire, int first, int last) {
    int length() {
      return last - first + 1;
    }
  }

  /** The holes, in order; none for a wire that is never present. */
  List<Hole> holes() {
    List<Hole> holes = new ArrayList<>();
    int next = first;
    for (Map.Entry<Integer, Integer> run : lastByFirst.entrySet()) {
      if (run.getKey() > first) {
        holes.add(new Hole(wire, next, run.getKey() - 1));
      }
      next = run.getValue() + 1;
    }
    if (!lastByFirst.isEmpty() && next <= last) {
      holes.add(new Hole(wire, next, last));
    }
    return holes;
  }

  boolean isEmpty() {
    return lastByFirst.isEmpty();
  }

  /** Whether one run holds both indices. */
  boolean holdsBoth(int from, int to) {
    Map.Entry<Integer, Integer> run = lastByFirst.floorEntry(from);
    return run != null && run.getValue() >= to;
  }

  /** First index of the run that holds an index. */
  int runFirst(int index) {
    return lastByFirst.floorKey(index);
  }

  /** Last index of the run that holds an index. */
  int runLast(int index) {
    return lastByFirst.floorEntry(index).getValue();
  }

  /** Joins what lies on both sides of a hole, which is bridged now. */
  void close(Hole hole) {
    boolean before = hole.first() > first;
    boolean after = hole.last() < last;
    int start = before ? runFirst(hole.first() - 1) : first;
    int end = after ? lastByFirst.remove(hole.last() + 1) : last;
    lastByFirst.put(start, end);
  }
}
