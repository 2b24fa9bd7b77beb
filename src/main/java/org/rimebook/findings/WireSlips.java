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

  /** Noise is judged in this much time on each side [ms]; wind makes it come and go. */
  private static final long NOISE_MS = 6 * 3_600_000L;

  /** How much of the step the wire had lost, and the others gained, before; own choice. */
  private static final double LOST_SHARE = 0.6;

  /** It loses gradually: no block takes more than this share of it; own choice. */
  private static final double GRADUAL_SHARE = 0.7;

  /** It is looked back this far [ms]; own choice. */
  private static final long BACK_MS = 12 * 3_600_000L;

  private final Blocks blocks;
  private final double[] ownMm;
  private final double[] othersMm;

  WireSlips(Blocks blocks, int wire) {
    this.blocks = blocks;
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
      if (stepMm > STEP_MM && stepMm > STEP_SD * noiseMm(block)) {
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

  /** Usual change from block to block around one, of how far the wire is behind [mm]. */
  private double noiseMm(int block) {
    int reach = (int) (NOISE_MS / blocks.lengthMs());
    double[] changes =
        IntStream.range(Math.max(1, block - reach), Math.min(ownMm.length, block + reach))
            .mapToDouble(b -> behindMm(b) - behindMm(b - 1))
            .filter(Double::isFinite)
            .toArray();
    return Robust.sdInPlace(changes, changes.length);
  }

  private int back(int block) {
    return Math.max(0, block - (int) (BACK_MS / blocks.lengthMs()));
  }

  /** The block since which the wire fell behind by most of a step; −1 when it didn't. */
  private int stuckSince(int last, int first, double stepMm) {
    int least = last;
    double fastestMm = 0;
    for (int block = last; block > first && Double.isFinite(behindMm(block - 1)); block--) {
      fastestMm = Math.max(fastestMm, behindMm(block) - behindMm(block - 1));
      least = behindMm(block - 1) < behindMm(least) ? block - 1 : least;
    }
    double lostMm = behindMm(last) - behindMm(least);
    double gainedMm = othersMm[last] - othersMm[least];
    boolean stuck =
        lostMm >= LOST_SHARE * stepMm
            && gainedMm >= LOST_SHARE * stepMm
            && fastestMm <= GRADUAL_SHARE * stepMm
            && Math.abs(ownMm[last] - ownMm[least]) < (1 - LOST_SHARE) * gainedMm;
    return stuck ? least : -1;
  }
}
