package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.depth.Screening;

/**
 * How long a wire jumps about before it falls silent, or after: readings that are missing, out of
 * range, spikes, or stand off from every other wire by far more than they usually do.
 */
final class Erratic {

  /** A reading stands off by at least this [mm]; own choice, several times what sun or tilt do. */
  static final double STANDS_OFF_MM = 3;

  /** Usual noises it stands off by at least; own choice. */
  private static final double STANDS_OFF_SD = 12;

  /** Share of the readings of an hour that stand off while a wire jumps about; own choice. */
  private static final double LEAST_SHARE = 0.08;

  private static final int LEAST_WILD = 2;
  private static final int LEAST_READINGS = 12;
  private static final int MOST_QUIET_WINDOWS = 2;
  private static final long HOUR_MS = 3_600_000;
  private static final long LONGEST_MS = 240 * HOUR_MS;

  private final Scene scene;
  private final Pace pace;
  private final int wire;
  private final double[] usualMm;
  private final double limitMm;

  /**
   * @param nearRow row about which the wire's usual distance from the others is taken
   */
  Erratic(Scene scene, Pace pace, int wire, int nearRow) {
    this.scene = scene;
    this.pace = pace;
    this.wire = wire;
    this.usualMm = new double[scene.depths().wires()];
    Blocks blocks = scene.blocks();
    int middle = blocks.at(scene.record().stampMs(Math.min(nearRow, scene.record().size() - 1)));
    int reach = (int) Math.max(1, LONGEST_MS / blocks.lengthMs());
    int from = Math.max(0, middle - reach);
    int to = Math.min(blocks.size(), middle + reach);
    for (int other = 0; other < usualMm.length; other++) {
      usualMm[other] = medianDistanceMm(blocks, other, from, to);
    }
    this.limitMm = Math.max(STANDS_OFF_MM, STANDS_OFF_SD * noiseMm(blocks, from, to));
  }

  private double medianDistanceMm(Blocks blocks, int other, int from, int to) {
    double[] distances = new double[to - from];
    int count = 0;
    for (int block = from; block < to; block++) {
      double distance = blocks.depthMm(wire, block) - blocks.depthMm(other, block);
      if (Double.isFinite(distance)) {
        distances[count++] = distance;
      }
    }
    return count == 0 ? Double.NaN : Robust.medianInPlace(distances, count);
  }

  private double noiseMm(Blocks blocks, int from, int to) {
    double[] noises = new double[to - from];
    Arrays.setAll(noises, i -> blocks.noiseMm(wire, from + i));
    double[] known = Arrays.stream(noises).filter(Double::isFinite).toArray();
    return known.length == 0 ? 0 : Robust.medianInPlace(known, known.length);
  }

  /** Whether a reading is missing or wild. */
  boolean wild(int row) {
    Screening screening = scene.depths().screening(wire, row);
    return switch (screening) {
      case MISSING, OUT_OF_RANGE, SPIKE -> true;
      case USED -> standsOff(row);
      case BAD_INTERVAL, SERVICE_VISIT -> false;
    };
  }

  private boolean standsOff(int row) {
    boolean any = false;
    for (int other = 0; other < usualMm.length; other++) {
      if (other != wire && scene.depths().used(other, row) && Double.isFinite(usualMm[other])) {
        double mm = scene.depths().depthMm(wire, row) - scene.depths().depthMm(other, row);
        if (Math.abs(mm - usualMm[other]) <= limitMm) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  /** The row it starts to jump about in, going back from where it is silent. */
  int startBefore(int silentRow) {
    return end(silentRow - 1, -1) + 1;
  }

  /** The row after the last wild one, going on from where it isn't silent any more. */
  int endAfter(int toRow) {
    return end(toRow, 1);
  }

  /** The row beyond the last wild one, going some way from a row. */
  private int end(int fromRow, int way) {
    int window = Math.max(LEAST_READINGS, pace.readings(HOUR_MS));
    int most = Math.max(window, pace.readings(LONGEST_MS));
    int found = fromRow;
    int quiet = 0;
    for (int gone = 0; gone < most && quiet <= MOST_QUIET_WINDOWS; gone += window) {
      int wild = 0;
      int last = found;
      for (int i = gone; i < gone + window && inside(fromRow + way * i); i++) {
        if (wild(fromRow + way * i)) {
          wild++;
          last = fromRow + way * (i + 1);
        }
      }
      boolean jumps = wild >= LEAST_WILD && wild >= LEAST_SHARE * window;
      quiet = jumps ? 0 : quiet + 1;
      found = jumps ? last : found;
    }
    return found;
  }

  private boolean inside(int row) {
    return row >= 0 && row < scene.record().size();
  }
}
