package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.record.Column;

/**
 * Runs of readings of one wire in which its frequency stays within the smallest step its counter
 * shows, and how long such runs usually last.
 */
final class HeldRuns {

  /** Steps smaller than this are rounding [Hz or counts]. */
  private static final double ROUNDING = 1e-6;

  /** Readings that may lie elsewhere without ending a run: one struck by a spike; own choice. */
  private static final int MOST_ELSEWHERE = 2;

  /** Shorter runs tell nothing, and a season has a million of them. */
  private static final int FEWEST = 12;

  private final Column frequency;
  private final double step;
  private final List<Held> runs = new ArrayList<>();
  private final int[] startOfRow;

  /**
   * A run.
   *
   * @param fromRow its first row
   * @param toRow the row after its last
   * @param readings readings in it
   */
  record Held(int fromRow, int toRow, int readings) {}

  HeldRuns(Column frequency, double step) {
    this.frequency = frequency;
    this.step = step;
    this.startOfRow = new int[frequency.size()];
    cut();
  }

  private void cut() {
    int row = 0;
    while (row < frequency.size()) {
      row = Double.isFinite(frequency.get(row)) ? held(row) : row + 1;
    }
  }

  /** Adds the run that starts in a row and tells where the next may. */
  private int held(int fromRow) {
    double low = frequency.get(fromRow);
    double high = low;
    double widest = step * 1.01 + ROUNDING;
    int readings = 1;
    int end = fromRow + 1;
    int elsewhere = 0;
    startOfRow[fromRow] = 1;
    for (int row = end; row < frequency.size() && elsewhere <= MOST_ELSEWHERE; row++) {
      double value = frequency.get(row);
      if (Double.isFinite(value)) {
        boolean within = Math.max(high, value) - Math.min(low, value) <= widest;
        elsewhere = within ? 0 : elsewhere + 1;
        if (within) {
          low = Math.min(low, value);
          high = Math.max(high, value);
          readings++;
          end = row + 1;
        }
      }
    }
    if (readings >= FEWEST) {
      runs.add(new Held(fromRow, end, readings));
    }
    return end;
  }

  /** All runs of some length, in the order of time. */
  List<Held> runs() {
    return runs;
  }

  /**
   * How often a run ends, a reading, in the twentieth of the season in which that happens most
   * seldom, the longest runs left out.
   *
   * @param window readings over which it is counted
   */
  double endsPerReading(int window) {
    int longest = runs.stream().mapToInt(Held::readings).max().orElse(0);
    boolean[] left = new boolean[frequency.size() / window + 1];
    for (Held run : runs) {
      if (3 * run.readings >= longest && run.readings >= window) {
        Arrays.fill(left, run.fromRow / window, (run.toRow - 1) / window + 1, true);
      }
    }
    double[] shares =
        IntStream.range(0, left.length)
            .filter(i -> !left[i])
            .mapToDouble(i -> share(i * window, (i + 1) * window))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    return shares.length < 20 ? 0 : shares[shares.length / 20];
  }

  private double share(int fromRow, int toRow) {
    int starts = 0;
    int finite = 0;
    for (int row = fromRow; row < Math.min(toRow, frequency.size()); row++) {
      starts += startOfRow[row];
      finite += Double.isFinite(frequency.get(row)) ? 1 : 0;
    }
    return 2 * finite < toRow - fromRow ? Double.NaN : (double) starts / finite;
  }
}
