package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;

/**
 * Rises of the level that are over within an hour and a half, after hours in which the level stood
 * still.
 */
final class SteepRises {

  private static final long HOUR_MS = 3_600_000;

  /** Longest rise, as a cap of snow slides in [ms]; own choice. */
  private static final long LONGEST_MS = 3 * HOUR_MS / 2;

  /** Least rise that is looked for [mm]. */
  private static final double LEAST_MM = 1;

  /** A level within this of another stands still [mm]; own choice. */
  private static final double STILL_MM = 0.25;

  private static final double FOOT = 0.1;

  private final Blocks blocks;
  private final int hour;
  private final int longest;
  private final int shortestStill;

  private SteepRises(Blocks blocks, long shortestStillMs) {
    this.blocks = blocks;
    this.hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    this.longest = (int) Math.floorDiv(LONGEST_MS + blocks.lengthMs() - 1, blocks.lengthMs()) + 1;
    this.shortestStill = (int) Math.max(2, shortestStillMs / blocks.lengthMs());
  }

  /**
   * A rise.
   *
   * @param stillFrom the block since which the level stood still
   * @param from the first block that lies higher
   * @param to the block after the rise, one more than the level shows so that all of it is inside
   * @param mm how far the level rose [mm]
   */
  record Rise(int stillFrom, int from, int to, double mm) {}

  /** The rises of a season that come after a time in which the level stood still. */
  static List<Rise> of(Blocks blocks, long shortestStillMs) {
    SteepRises look = new SteepRises(blocks, shortestStillMs);
    List<Rise> rises = new ArrayList<>();
    int block = look.hour;
    while (block + look.longest + look.hour <= blocks.size()) {
      Rise rise = look.at(block);
      if (rise.mm() >= LEAST_MM) {
        rises.add(rise);
        block = rise.to() + look.hour;
      }
      block++;
    }
    return rises;
  }

  /** The rise in the window that starts at a block; of 0 mm when it isn't one. */
  private Rise at(int block) {
    Rise none = new Rise(block, block, block, 0);
    int segment = blocks.segment(block - 1);
    if (segment < 0 || !(upMm(block) >= LEAST_MM)) {
      return none;
    }
    double lowMm = Fillings.medianMm(blocks, block - hour, block);
    double someMm = Fillings.medianMm(blocks, block + longest, block + longest + hour) - lowMm;
    int from = block;
    while (from < block + longest && !(blocks.levelMm(from) > lowMm + FOOT * someMm)) {
      from++;
    }
    // The window may have seen only the start of the rise: what it rises to is looked up anew.
    double baseMm = Fillings.medianMm(blocks, from - hour, from);
    double mm = Fillings.medianMm(blocks, from + longest, from + longest + hour) - baseMm;
    int to = from;
    while (to < from + longest && !(blocks.levelMm(to) >= baseMm + (1 - FOOT) * mm)) {
      to++;
    }
    int still = stillFrom(from, baseMm, segment);
    boolean one = blocks.segment(Math.min(blocks.size() - 1, from + longest)) == segment;
    return one && mm >= LEAST_MM && from - still >= shortestStill
        ? new Rise(still, from, Math.min(blocks.size(), to + 2), mm)
        : none;
  }

  /** Rise across the window that starts at a block, by single blocks [mm]; a quick first look. */
  private double upMm(int block) {
    double after = blocks.levelMm(block + longest);
    double before = blocks.levelMm(block - 1);
    return Double.isFinite(after) && Double.isFinite(before) ? after - before + STILL_MM : LEAST_MM;
  }

  private int stillFrom(int from, double baseMm, int segment) {
    int still = from;
    while (still - hour >= 0) {
      double median = Fillings.medianMm(blocks, still - hour, still);
      boolean same = blocks.segment(still - hour) == segment || blocks.segment(still - hour) < 0;
      if (!same || Math.abs(median - baseMm) > STILL_MM) {
        return settled(still, from, baseMm);
      }
      still -= hour;
    }
    return settled(still, from, baseMm);
  }

  /** Half of the first hour may still rise without its median showing it. */
  private int settled(int still, int from, double baseMm) {
    int block = still;
    while (block < from && baseMm - blocks.levelMm(block) > STILL_MM) {
      block++;
    }
    return block;
  }
}
