package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.rimebook.depth.LevelSeries;

/** Means of readings at the nodes of a level, and about them. */
final class NodeMeans {

  private final LevelNodes nodes;

  NodeMeans(LevelNodes nodes) {
    this.nodes = nodes;
  }

  /**
   * Mean of the readings of each node that have a value; NaN where none has.
   *
   * @param level the level the nodes were made of
   * @param valueAt value in a row of the record; NaN where there is none
   */
  double[] ofReadings(LevelSeries level, IntToDoubleFunction valueAt) {
    double[] values = new double[nodes.size()];
    for (int node = 0; node < nodes.size(); node++) {
      int first = nodes.firstIndex()[node];
      int end = Math.min(level.size(), first + nodes.readings()[node]);
      double sum = 0;
      int count = 0;
      for (int i = first; i < end; i++) {
        double value = valueAt.applyAsDouble(level.row(i));
        if (!Double.isNaN(value)) {
          sum += value;
          count++;
        }
      }
      values[node] = count == 0 ? Double.NaN : sum / count;
    }
    return values;
  }

  /**
   * Fills what is missing on a straight line between neighbours; false when there is nothing.
   *
   * @param values by node, NaN where there is none; changed
   */
  boolean fill(double[] values) {
    int last = -1;
    for (int i = 0; i < values.length; i++) {
      if (Double.isNaN(values[i])) {
        continue;
      }
      if (last < 0) {
        Arrays.fill(values, 0, i, values[i]);
      }
      for (int k = last + 1; last >= 0 && k < i; k++) {
        double share =
            (nodes.timeMs()[k] - nodes.timeMs()[last])
                / (double) (nodes.timeMs()[i] - nodes.timeMs()[last]);
        values[k] = values[last] + share * (values[i] - values[last]);
      }
      last = i;
    }
    if (last >= 0) {
      Arrays.fill(values, last + 1, values.length, values[last]);
    }
    return last >= 0;
  }

  /**
   * Mean about each node, within the stretch the level compares over.
   *
   * @param values by node, finite
   * @param halfWindowMs how far to either side [ms]
   */
  double[] about(double[] values, long halfWindowMs) {
    double[] mean = new double[values.length];
    int start = 0;
    while (start < values.length) {
      int end = nextBreak(start);
      int from = start;
      int to = start;
      double sum = 0;
      for (int i = start; i < end; i++) {
        while (to < end && nodes.timeMs()[to] <= nodes.timeMs()[i] + halfWindowMs) {
          sum += values[to++];
        }
        while (nodes.timeMs()[from] < nodes.timeMs()[i] - halfWindowMs) {
          sum -= values[from++];
        }
        mean[i] = sum / (to - from);
      }
      start = end;
    }
    return mean;
  }

  private int nextBreak(int from) {
    int i = from;
    while (i < nodes.links().length && nodes.links()[i] != LevelNodes.Link.BREAK) {
      i++;
    }
    return Math.min(nodes.size(), i + 1);
  }
}
