package org.rimebook.accumulation;

import java.util.List;
import org.rimebook.depth.Robust;

/**
 * Changes of the hourly level over hours that are wholly dry, with the terms that may explain them.
 */
final class DryChanges {

  /** Hours a change is taken over. */
  static final int LAG = 3;

  private static final long HOUR_MS = 3_600_000;
  private static final double DRY = 0.3;

  private final double[] changeMm;
  private final double[][] terms;
  private int size;

  private DryChanges(int capacity) {
    this.changeMm = new double[capacity];
    this.terms = new double[capacity][];
  }

  static DryChanges of(
      LevelNodes nodes, Covariates covariates, double[] varianceMm2, double[] wet) {
    DryDrift.BlockMeans level = DryDrift.BlockMeans.of(nodes, varianceMm2, HOUR_MS);
    List<DryDrift.BlockMeans> columns =
        covariates.columns().stream()
            .map(c -> DryDrift.BlockMeans.of(nodes.at(c), varianceMm2, HOUR_MS))
            .toList();
    boolean[] dry = dryBlocks(level, wet);
    DryChanges changes = new DryChanges(level.size());
    for (int k = LAG; k < level.size(); k++) {
      boolean joined =
          level.run()[k] == level.run()[k - LAG]
              && level.index()[k] - level.index()[k - LAG] == LAG;
      boolean allDry = true;
      for (int j = k - LAG; j <= k; j++) {
        allDry &= dry[j];
      }
      if (joined && allDry) {
        changes.add(level, columns, k);
      }
    }
    return changes;
  }

  private static boolean[] dryBlocks(DryDrift.BlockMeans level, double[] wet) {
    boolean[] dry = new boolean[level.size()];
    for (int k = 0; k < level.size(); k++) {
      dry[k] = true;
      int end = Math.min(wet.length, level.firstNode()[k] + level.nodes()[k]);
      for (int link = Math.max(0, level.firstNode()[k] - 1); link < end; link++) {
        dry[k] &= wet[link] < DRY;
      }
    }
    return dry;
  }

  private void add(DryDrift.BlockMeans level, List<DryDrift.BlockMeans> columns, int k) {
    double change = level.levelMm()[k] - level.levelMm()[k - LAG];
    if (Double.isNaN(change)) {
      return;
    }
    double[] row = new double[columns.size() + DailyTerms.COUNT];
    for (int c = 0; c < columns.size(); c++) {
      row[c] = columns.get(c).levelMm()[k] - columns.get(c).levelMm()[k - LAG];
    }
    for (int h = 0; h < LAG; h++) {
      DailyTerms.addTo(row, columns.size(), (level.index()[k] - h) * HOUR_MS);
    }
    changeMm[size] = change;
    terms[size] = row;
    size++;
  }

  int size() {
    return size;
  }

  double changeMm(int s) {
    return changeMm[s];
  }

  double term(int s, int term) {
    return terms[s][term];
  }

  double residual(int s, double[] coefficients) {
    double residual = changeMm[s];
    for (int a = 0; a < coefficients.length; a++) {
      residual -= coefficients[a] * terms[s][a];
    }
    return residual;
  }

  double spread(double[] coefficients) {
    double[] magnitudes = new double[size];
    for (int s = 0; s < size; s++) {
      magnitudes[s] = Math.abs(residual(s, coefficients));
    }
    return Math.max(1e-4, Robust.sdFromMagnitudesInPlace(magnitudes, size));
  }
}
