package org.rimebook.practice.published;

import java.util.BitSet;
import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * Increments of a level that are settled by the rule of the neutral aggregating filter: those below
 * a threshold are taken in ascending order, the most negative first; each goes to a neighbouring
 * positive increment and becomes zero, until every increment that isn't zero reaches the threshold.
 *
 * <p>The sources leave the order of neighbours open. Ours: the nearest positive increment, counted
 * in steps; of two as near, the larger; of two as large, the earlier. Equal increments are taken
 * from the earliest. An increment goes to its neighbour whole; a neighbour that falls below the
 * threshold by it has its own turn later.
 *
 * <p>Amounts are counted in whole nanometres, so that the net is kept exactly and an increment of
 * the threshold is never taken for less.
 */
final class Increments {

  private static final double PER_MM = 1e6;

  private final long[] amount;
  private final BitSet positive = new BitSet();

  private Increments(long[] amount) {
    this.amount = amount;
  }

  /** The increments between levels [mm]; one fewer than the levels. */
  static Increments ofLevels(double[] levelMm) {
    long[] amount = new long[Math.max(0, levelMm.length - 1)];
    for (int i = 0; i < amount.length; i++) {
      amount[i] = Math.round(levelMm[i + 1] * PER_MM) - Math.round(levelMm[i] * PER_MM);
    }
    return new Increments(amount);
  }

  /**
   * What became of the increments.
   *
   * @param incrementMm increments [mm], each zero or at least the threshold
   * @param residualMm what no increment could take: zero when the net is at least the threshold,
   *     the net otherwise [mm]
   */
  record Settled(double[] incrementMm, double residualMm) {}

  /** Settles the increments; what they were is kept. */
  Settled settle(double thresholdMm) {
    return new Increments(amount.clone()).settleInPlace(Math.round(thresholdMm * PER_MM));
  }

  private Settled settleInPlace(long threshold) {
    PriorityQueue<Turn> turns =
        new PriorityQueue<>(Comparator.comparingLong(Turn::amount).thenComparingInt(Turn::index));
    for (int i = 0; i < amount.length; i++) {
      positive.set(i, amount[i] > 0);
      if (amount[i] != 0 && amount[i] < threshold) {
        turns.add(new Turn(amount[i], i));
      }
    }
    long residual = 0;
    while (!turns.isEmpty()) {
      Turn turn = turns.poll();
      if (turn.amount() != amount[turn.index()]) {
        continue; // It has changed since, and has another turn if it needs one.
      }
      set(turn.index(), 0);
      int taker = nearestPositive(turn.index());
      if (taker < 0) {
        residual += turn.amount();
        continue;
      }
      long sum = amount[taker] + turn.amount();
      set(taker, sum);
      if (sum != 0 && sum < threshold) {
        turns.add(new Turn(sum, taker));
      }
    }
    return settled(residual);
  }

  private void set(int index, long value) {
    amount[index] = value;
    positive.set(index, value > 0);
  }

  /** The nearest positive increment, not counting the place itself; -1 when there is none. */
  private int nearestPositive(int index) {
    int before = index == 0 ? -1 : positive.previousSetBit(index - 1);
    int after = positive.nextSetBit(index + 1);
    if (before < 0 || after < 0) {
      return Math.max(before, after);
    }
    int nearer = Integer.compare(index - before, after - index);
    if (nearer == 0) {
      return amount[after] > amount[before] ? after : before;
    }
    return nearer < 0 ? before : after;
  }

  private Settled settled(long residual) {
    double[] incrementMm = new double[amount.length];
    for (int i = 0; i < amount.length; i++) {
      incrementMm[i] = amount[i] / PER_MM;
    }
    return new Settled(incrementMm, residual / PER_MM);
  }

  /** An increment below the threshold as it was when it was put in line. */
  private record Turn(long amount, int index) {}
}
