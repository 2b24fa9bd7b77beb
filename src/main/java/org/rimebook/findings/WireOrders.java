package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Ways to give the wires of a gauge each other's calibrations, and which of them suits the readings
 * hour by hour. The readings of an hour suit an order when they make the depths agree; the order
 * changes as seldom as it can, and where somebody was at the gauge rather than elsewhere.
 */
final class WireOrders {

  /** Sound wires differ by so much [mm] and such a share of the depth; own choice, see Tilt. */
  private static final double USUAL_MM = 1;

  private static final double USUAL_SHARE = 0.007;

  /** An hour can't speak more strongly than this against an order; own choice. */
  private static final double MOST_COST = 8;

  /** What a change of order costs at a visit, and elsewhere, in the costs of hours; own choice. */
  private static final double VISIT_COST = 20;

  private static final double ELSEWHERE_COST = 120;

  private final SharedHours hours;
  private final List<int[]> orders;

  WireOrders(SharedHours hours) {
    this.hours = hours;
    this.orders = permutations(hours.wires());
  }

  /**
   * Hours that an order suits.
   *
   * @param number number of the order
   * @param from first hour
   * @param to first hour after
   */
  record Run(int number, int from, int to) {}

  /** All orders, that of the sheet first. */
  static List<int[]> permutations(int wires) {
    List<int[]> all = new ArrayList<>();
    extend(IntStream.range(0, wires).toArray(), 0, all);
    return all;
  }

  private static void extend(int[] order, int at, List<int[]> all) {
    if (at == order.length) {
      all.add(order.clone());
    }
    for (int i = at; i < order.length; i++) {
      swap(order, at, i);
      extend(order, at + 1, all);
      swap(order, at, i);
    }
  }

  private static void swap(int[] order, int one, int other) {
    int kept = order[one];
    order[one] = order[other];
    order[other] = kept;
  }

  /** The order of a number: wire w has the calibration of wire {@code order(n)[w]}. */
  int[] order(int number) {
    return orders.get(number).clone();
  }

  /** How far the depths of an hour lie from their mean under an order, root mean square [mm]. */
  double spreadMm(int number, int hour) {
    int[] order = orders.get(number);
    double sum = 0;
    double squares = 0;
    for (int wire = 0; wire < order.length; wire++) {
      double depth = hours.depthMm(wire, order[wire], hour);
      sum += depth;
      squares += depth * depth;
    }
    double mean = sum / order.length;
    return Math.sqrt(Math.max(0, squares / order.length - mean * mean));
  }

  /** How far the depths of sound wires may lie from their mean in an hour [mm]. */
  double usualMm(int number, int hour) {
    int[] order = orders.get(number);
    double sum = 0;
    for (int wire = 0; wire < order.length; wire++) {
      sum += hours.depthMm(wire, order[wire], hour);
    }
    return USUAL_MM + USUAL_SHARE * Math.max(0, sum / order.length);
  }

  private double cost(int number, int hour) {
    if (!hours.known(hour)) {
      return 0;
    }
    double ratio = spreadMm(number, hour) / usualMm(number, hour);
    return Math.min(MOST_COST, 0.5 * ratio * ratio);
  }

  /**
   * The number of the order in each hour that costs least in all (the Viterbi algorithm, A. Viterbi
   * 1967, IEEE Trans. Inf. Theory 13, 260, from memory).
   *
   * @param visited whether somebody was at the gauge in the hour or just before it
   */
  int[] likeliest(boolean[] visited) {
    int size = hours.size();
    int[][] from = new int[size][orders.size()];
    double[] total = new double[orders.size()];
    Arrays.fill(total, ELSEWHERE_COST);
    total[0] = 0;
    for (int hour = 0; hour < size; hour++) {
      int best = best(total);
      double change = total[best] + (visited[hour] ? VISIT_COST : ELSEWHERE_COST);
      for (int number = 0; number < total.length; number++) {
        boolean kept = hour == 0 || total[number] <= change;
        from[hour][number] = kept ? number : best;
        total[number] = (kept ? total[number] : change) + cost(number, hour);
      }
    }
    int[] path = new int[size];
    int at = best(total);
    for (int hour = size - 1; hour >= 0; hour--) {
      path[hour] = at;
      at = from[hour][at];
    }
    return path;
  }

  private static int best(double[] total) {
    int best = 0;
    for (int i = 1; i < total.length; i++) {
      best = total[i] < total[best] ? i : best;
    }
    return best;
  }
}
