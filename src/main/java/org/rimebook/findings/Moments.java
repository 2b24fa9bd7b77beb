package org.rimebook.findings;

import java.util.Arrays;
import java.util.Optional;
import org.rimebook.depth.Robust;

/** Finds the moment at which the difference of two wires jumps. */
final class Moments {

  /** Time taken on each side of a jump, and about it as a finding [ms]; own choice. */
  static final long ABOUT_MS = 3_600_000;

  /** Share of a shift that comes at once; own choice. */
  private static final double AT_ONCE = 0.6;

  private final Blocks blocks;
  private final int side;

  Moments(Scene scene) {
    this.blocks = scene.blocks();
    this.side = (int) Math.max(1, ABOUT_MS / blocks.lengthMs());
  }

  /**
   * The moment of a jump.
   *
   * @param nearMs midnight of the first night after it [ms since epoch]
   * @param mm by how much the first wire jumps against the second [mm]
   * @return empty when no jump of that sign and most of that size is near
   */
  Optional<Long> of(int one, int other, long nearMs, double mm) {
    int from = Math.max(side, blocks.at(nearMs - Nights.DAY_MS - Nights.DAY_MS / 4));
    int to =
        Math.min(blocks.size() - side, blocks.at(nearMs + Nights.DAY_MS + Nights.DAY_MS / 4) + 1);
    double most = AT_ONCE * Math.abs(mm);
    Optional<Long> moment = Optional.empty();
    for (int block = from; block < to; block++) {
      double jump = Math.signum(mm) * jumpMm(one, other, block);
      if (jump > most) {
        most = jump;
        moment = Optional.of(blocks.startMs(block));
      }
    }
    return moment;
  }

  /** By how much the first of two wires jumps against the second at a moment [mm], or NaN. */
  double jumpMm(int one, int other, long atMs) {
    int block = blocks.at(atMs);
    return block < side || block + side > blocks.size() ? Double.NaN : jumpMm(one, other, block);
  }

  private double jumpMm(int one, int other, int block) {
    return medianMm(one, other, block, block + side) - medianMm(one, other, block - side, block);
  }

  private double medianMm(int one, int other, int from, int to) {
    double[] mm = new double[to - from];
    Arrays.setAll(mm, i -> blocks.depthMm(one, from + i) - blocks.depthMm(other, from + i));
    double[] known = Arrays.stream(mm).filter(Double::isFinite).toArray();
    return known.length == 0 ? Double.NaN : Robust.medianInPlace(known, known.length);
  }
}
