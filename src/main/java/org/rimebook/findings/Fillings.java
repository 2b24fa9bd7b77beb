package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.depth.Robust;

/** What the bucket held between two emptyings, or as long as its levels compare. */
final class Fillings {

  private Fillings() {}

  /**
   * A filling.
   *
   * @param from its first block with a level
   * @param to the block after its last with a level
   */
  record Filling(int from, int to) {}

  /** Fillings in the order of time. */
  static List<Filling> of(Blocks blocks) {
    List<Filling> fillings = new ArrayList<>();
    int from = -1;
    int last = -1;
    for (int block = 0; block < blocks.size(); block++) {
      if (Double.isFinite(blocks.levelMm(block))) {
        if (from >= 0 && blocks.segment(block) != blocks.segment(from)) {
          fillings.add(new Filling(from, last + 1));
          from = block;
        }
        from = from < 0 ? block : from;
        last = block;
      }
    }
    if (from >= 0) {
      fillings.add(new Filling(from, last + 1));
    }
    return fillings;
  }

  /** Median level of some blocks [mm]; NaN when none has a level. */
  static double medianMm(Blocks blocks, int from, int to) {
    int first = Math.max(0, from);
    int end = Math.min(blocks.size(), to);
    double[] values = new double[Math.max(0, end - first)];
    int count = 0;
    for (int block = first; block < end; block++) {
      if (Double.isFinite(blocks.levelMm(block))) {
        values[count++] = blocks.levelMm(block);
      }
    }
    return count == 0 ? Double.NaN : Robust.medianInPlace(values, count);
  }

  /** The highest hourly median of a filling [mm]; NaN when it has none. */
  static double topMm(Blocks blocks, Filling filling, int perHour) {
    double top = Double.NaN;
    for (int block = filling.from(); block < filling.to(); block += perHour) {
      double median = medianMm(blocks, block, Math.min(filling.to(), block + perHour));
      top = Double.isNaN(top) || median > top ? median : top;
    }
    return top;
  }
}
