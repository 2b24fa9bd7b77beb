package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;

/** Where one wire falls behind the others as they rise and then catches up at once. */
final class WireSlips {

  /** A step has this size [mm] and so many usual changes of a block; own choice. */
  private static final double STEP_MM = 0.3;

  private static final double STEP_SD = 6;

  /** The same in steps of the wire's counter; own choice. */
  private static final double STEP_COUNTS = 3;

  /** Where the noise of readings isn't known it is judged in so much time on each side [ms]. */
  private static final long NOISE_MS = 6 * 3_600_000L;

  /** A rain-free day is among so much time on each side [ms]; own choice. */
  private static final long QUIET_MS = 24 * 3_600_000L;

  /** How much of the step the wire had lost, and the others gained, before; own choice. */
  private static final double LOST_SHARE = 0.6;

  /** It loses gradually: no block takes more than this share of it; own choice. */
  private static final double GRADUAL_SHARE = 0.9;

  /** It stands still within this share of the step; own choice. */
  private static final double STILL_SHARE = 0.3;

  /** It is left behind once it has lost this share; own choice. */
  private static final double SEEN_SHARE = 0.15;

  /** It is looked back this far [ms]; own choice. */
  private static final long BACK_MS = 48 * 3_600_000L;

  private final Blocks blocks;
  private final HourlyNoise noise;
  private final int wire;
  private final double leastMm;
  private final double[] ownMm;
  private final double[] othersMm;

  WireSlips(Scene scene, HourlyNoise noise, int wire) {
    this.blocks = scene.blocks();
    this.leastMm = Math.max(STEP_MM, STEP_COUNTS * scene.counterStepMm(wire));
    this.noise = noise;
    this.wire = wire;
    this.ownMm = new double[blocks.size()];
    this.othersMm = new double[blocks.size()];
    for (int block = 0; block < ownMm.length; block++) {
      ownMm[block] = blocks.depthMm(wire, block);
      double sum = 0;
      for (int other = 0; other < blocks.wires(); other++) {
        sum += other == wire ? 0 : blocks.depthMm(other, block);
      }
      othersMm[block] = sum / Math.max(1, blocks.wires() - 1);
    }
  }

  private double behindMm(int block) {
    return othersMm[block] - ownMm[block];
  }

  List<Slip> find() {
    List<Slip> slips = new ArrayList<>();
    if (blocks.wires() < 3) {
      return slips;
    }
    int begin = 0;
    for (int block = 1; block + 1 < ownMm.length; block++) {
      double stepMm = behindMm(block - 1) - behindMm(block + 1);
      boolean rose = ownMm[block + 1] - ownMm[block - 1] >= LOST_SHARE * stepMm;
      if (rose && stepMm > leastMm && stepMm > STEP_SD * noiseMm(block)) {
        int from = stuckSince(block - 1, Math.max(begin, back(block)), stepMm);
        if (from >= 0) {
          slips.add(new Slip(blocks.span(from, block + 2), stepMm));
        }
        begin = block + 1;
        block++;
      }
    }
    return slips;
  }

  /**
   * Usual change from block to block of how far the wire is behind [mm]. What readings scatter by
   * in the hour tells it: in a storm the sticking itself makes most changes.
   */
  private double noiseMm(int block) {
    double variance = 0;
    for (int each = 0; each < blocks.wires(); each++) {
      double share = each == wire ? 1 : 1.0 / (blocks.wires() - 1);
      double mm = share * noise.changeMm(each, block);
      variance += mm * mm;
    }
    return Double.isNaN(variance)
        ? usualMm(block, NOISE_MS)
        : Math.max(Math.sqrt(variance), usualMm(block, QUIET_MS));
  }

  private double usualMm(int block, long reachMs) {
    int reach = (int) (reachMs / blocks.lengthMs());
    double[] changes =
        IntStream.range(Math.max(1, block - reach), Math.min(ownMm.length, block + reach))
            .mapToDouble(b -> behindMm(b) - behindMm(b - 1))
            .filter(Double::isFinite)
            .toArray();
    return changes.length == 0
        ? Double.POSITIVE_INFINITY // nothing tells what is usual, so nothing is more than that
        : Robust.sdInPlace(changes, changes.length);
  }

  private int back(int block) {
    return Math.max(0, block - (int) (BACK_MS / blocks.lengthMs()));
  }

  /** The block since which the wire stood still and lost most of a step; −1 when it didn't. */
  private int stuckSince(int last, int first, double stepMm) {
    int from = last;
    double fastestMm = 0;
    while (from > first && Math.abs(ownMm[last] - ownMm[from - 1]) < STILL_SHARE * stepMm) {
      from--;
      fastestMm = Math.max(fastestMm, behindMm(from + 1) - behindMm(from));
    }
    double lostMm = behindMm(last) - behindMm(from);
    double gainedMm = othersMm[last] - othersMm[from];
    boolean stuck =
        lostMm >= LOST_SHARE * stepMm
            && gainedMm >= LOST_SHARE * stepMm
            && fastestMm <= GRADUAL_SHARE * stepMm;
    return stuck ? leftBehind(from, last, SEEN_SHARE * stepMm) : -1;
  }

  /** The last block before the wire is behind by more than an amount. */
  private int leftBehind(int from, int last, double mm) {
    int block = from;
    while (block < last && behindMm(block + 1) - behindMm(from) < mm) {
      block++;
    }
    return block;
  }
}
