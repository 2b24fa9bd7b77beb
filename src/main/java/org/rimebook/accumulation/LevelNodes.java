package org.rimebook.accumulation;

import java.util.Arrays;

/**
 * The level at increasing times, thinned to at most one value a minute, with what lies between each
 * value and the next. Arrays have one element a node, links one a node but the last.
 *
 * @param timeMs mean stamp of the readings of a node [ms since epoch]
 * @param levelMm mean level of the readings of a node [mm]
 * @param readings readings of a node
 * @param firstIndex index of a node's first reading in the level series; the others follow it
 * @param links what lies between a node and the next
 */
record LevelNodes(long[] timeMs, double[] levelMm, int[] readings, int[] firstIndex, Link[] links) {

  /** What lies between two nodes. */
  enum Link {
    /** Readings follow each other: the level between is known. */
    STEP,
    /** No usable reading for longer than a gap takes; the level compares across it. */
    GAP,
    /** Timing inside is unknown by the analyst's word; the level compares across it. */
    LATE,
    /** The level doesn't compare across it. */
    BREAK
  }

  int size() {
    return timeMs.length;
  }

  double hours(int link) {
    return (timeMs[link + 1] - timeMs[link]) / 3_600_000.0;
  }

  /** The same nodes at other levels [mm]. */
  LevelNodes at(double[] otherLevelMm) {
    return new LevelNodes(timeMs, otherLevelMm, readings, firstIndex, links);
  }

  /** The nodes from one to another, outside. */
  LevelNodes slice(int from, int to) {
    return new LevelNodes(
        Arrays.copyOfRange(timeMs, from, to),
        Arrays.copyOfRange(levelMm, from, to),
        Arrays.copyOfRange(readings, from, to),
        Arrays.copyOfRange(firstIndex, from, to),
        Arrays.copyOfRange(links, from, Math.max(from, to - 1)));
  }

  /** The last node at or before an instant; −1 when there is none. */
  int lastAtOrBefore(long epochMs) {
    int found = Arrays.binarySearch(timeMs, epochMs);
    return found >= 0 ? found : -found - 2;
  }
}
