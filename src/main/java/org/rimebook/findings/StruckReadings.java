package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.depth.Screening;

/**
 * Readings of one wire struck by interference: those left out as isolated spikes or out of range,
 * and in windows beside such ones those that stand off from the median of five by far more than
 * most do, whether isolated or not.
 */
final class StruckReadings {

  /** Least stand-off [mm], and in usual noises of the wire; own choice. */
  private static final double LEAST_MM = 1;

  private static final double LEAST_USUAL = 10;

  /**
   * Stand-offs that four readings in ten stay below, by which one is struck; own choice. Normal
   * noise reaches some ten of them once in thousands of readings.
   */
  private static final double LEAST_OTHERS = 20;

  /** Share of a stand-off by which another wire moves when it is the bucket; own choice. */
  private static final double ALIKE = 0.5;

  private static final double MOST_QUIET = 0.4;
  private static final int SIDE = 2;

  private final Scene scene;
  private final int wire;
  private final boolean[] struck;

  /**
   * @param window readings in a window
   */
  StruckReadings(Scene scene, int wire, int window) {
    this.scene = scene;
    this.wire = wire;
    this.struck = new boolean[scene.record().size()];
    boolean[] windows = new boolean[struck.length / window + 1];
    for (int row = 0; row < struck.length; row++) {
      struck[row] = leftOut(row);
      if (struck[row]) {
        int at = row / window;
        Arrays.fill(windows, Math.max(0, at - SIDE), Math.min(windows.length, at + SIDE + 1), true);
      }
    }
    double usualMm = usualMm();
    for (int at = 0; at < windows.length; at++) {
      if (windows[at]) {
        lookCloser(at * window, Math.min(struck.length, (at + 1) * window), usualMm);
      }
    }
    for (int row = 0; row < struck.length; row++) {
      struck[row] = struck[row] && !shared(row);
    }
  }

  private boolean leftOut(int row) {
    Screening screening = scene.depths().screening(wire, row);
    return screening == Screening.SPIKE || screening == Screening.OUT_OF_RANGE;
  }

  private double usualMm() {
    Blocks blocks = scene.blocks();
    double[] noises = new double[blocks.size()];
    Arrays.setAll(noises, block -> blocks.noiseMm(wire, block));
    double[] known = Arrays.stream(noises).filter(Double::isFinite).toArray();
    return known.length == 0 ? 0 : Robust.medianInPlace(known, known.length);
  }

  private void lookCloser(int fromRow, int toRow, double usualMm) {
    double[] offMm = new double[toRow - fromRow];
    Arrays.setAll(
        offMm,
        i ->
            scene.depths().used(wire, fromRow + i)
                ? Math.abs(standOffMm(wire, fromRow + i))
                : Double.NaN);
    double[] known = Arrays.stream(offMm).filter(Double::isFinite).sorted().toArray();
    if (known.length == 0) {
      return;
    }
    double quietMm = known[(int) (MOST_QUIET * known.length)];
    double limitMm = Math.max(LEAST_MM, Math.max(LEAST_USUAL * usualMm, LEAST_OTHERS * quietMm));
    for (int i = 0; i < offMm.length; i++) {
      struck[fromRow + i] |= offMm[i] > limitMm;
    }
  }

  /** From the median of the five readings about a row [mm]; NaN when it has none. */
  private double standOffMm(int wire, int row) {
    double[] five = new double[2 * SIDE + 1];
    int count = 0;
    for (int at = Math.max(0, row - SIDE); at <= Math.min(struck.length - 1, row + SIDE); at++) {
      double mm = scene.depths().depthMm(wire, at);
      if (Double.isFinite(mm)) {
        five[count++] = mm;
      }
    }
    return count == 0
        ? Double.NaN
        : scene.depths().depthMm(wire, row) - Robust.medianInPlace(five, count);
  }

  /** Whether another wire stands off alike, as when the bucket itself is moved. */
  private boolean shared(int row) {
    double ownMm = standOffMm(wire, row);
    for (int other = 0; other < scene.depths().wires(); other++) {
      if (other != wire && standOffMm(other, row) / ownMm >= ALIKE) {
        return true;
      }
    }
    return false;
  }

  /** Whether a reading is struck. */
  boolean at(int row) {
    return struck[row];
  }
}
