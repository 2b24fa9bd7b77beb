package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.findings.SteepRises.Rise;

/** What was measured hour by hour around a rise: while the level stood still before, and after. */
final class RiseHours {

  private static final double HOUR_MS = 3_600_000;

  /** A cap is looked for no further back; own choice. */
  private static final int LONGEST = 72;

  /** Hours before the level stood still that tell of the snow's depth then; own choice. */
  private static final int BEFORE = 6;

  private static final int AFTER = 1;

  private final Blocks blocks;
  private final int[] from;
  private final int perHour;
  private final int still;
  private final int rise;

  private RiseHours(Blocks blocks, int[] from, int perHour, int still, int rise) {
    this.blocks = blocks;
    this.from = from;
    this.perHour = perHour;
    this.still = still;
    this.rise = rise;
  }

  /**
   * Hours around a rise.
   *
   * @param airDegC air temperature by block [°C]; no elements when it isn't measured
   * @param warmth no cap is older than so much warmth [°C h], the hours above freezing summed
   */
  static RiseHours of(Blocks blocks, Rise rise, double[] airDegC, double warmth) {
    int perHour = perHour(blocks);
    int most = Math.min(LONGEST, (rise.from() - rise.stillFrom()) / perHour);
    double warm = 0;
    int count = 0;
    while (count < most && warm <= warmth) {
      count++;
      int hour = rise.from() - count * perHour;
      warm += Math.max(0, known(Means.of(airDegC, hour, hour + perHour)));
    }
    int before = Math.min(BEFORE, rise.from() / perHour - count);
    int after = Math.max(0, Math.min(AFTER, (blocks.size() - rise.to()) / perHour));
    int[] from = new int[before + count + after];
    for (int i = 0; i < from.length; i++) {
      int sinceRise = i - before - count;
      from[i] = (sinceRise < 0 ? rise.from() : rise.to()) + sinceRise * perHour;
    }
    return new RiseHours(blocks, from, perHour, before, before + count);
  }

  /** Blocks in an hour; one when blocks are as long. */
  static int perHour(Blocks blocks) {
    return (int) Math.max(1, HOUR_MS / blocks.lengthMs());
  }

  private static double known(double value) {
    return Double.isFinite(value) ? value : 0;
  }

  /** Hours. */
  int size() {
    return from.length;
  }

  /** The first hour in which the level stood still. */
  int still() {
    return still;
  }

  /** The first hour after the rise; that before it is the last in which the level stood still. */
  int rise() {
    return rise;
  }

  /** The first block of an hour. */
  int firstBlock(int hour) {
    return from[hour];
  }

  /** Time from the middle of the hour before to that of an hour [h]. */
  double step(int hour) {
    return hour == 0 ? 0 : (from[hour] - from[hour - 1]) * blocks.lengthMs() / HOUR_MS;
  }

  /** Hours' means of a channel by block, the least and the largest left out. */
  double[] middles(double[] channel) {
    return Arrays.stream(from).mapToDouble(i -> middle(channel, i, i + perHour)).toArray();
  }

  /** Hours' means of a channel by block. */
  double[] means(double[] channel) {
    return Arrays.stream(from).mapToDouble(i -> Means.of(channel, i, i + perHour)).toArray();
  }

  /** How much the level rose into each hour [mm]; nothing where it only wavers. */
  double[] risesMm(double leastMm) {
    double[] rises = new double[from.length];
    double level = Double.NaN;
    for (int hour = 0; hour < rises.length; hour++) {
      double now = Fillings.medianMm(blocks, from[hour], from[hour] + perHour);
      rises[hour] = now - level >= leastMm ? now - level : 0;
      level = Double.isFinite(now) ? now : level;
    }
    return rises;
  }

  /** Mean of some blocks without the least and the largest; NaN when nothing is known. */
  static double middle(double[] values, int from, int to) {
    int end = Math.min(values.length, to);
    double[] known =
        from >= end
            ? new double[0]
            : Arrays.stream(values, from, end).filter(Double::isFinite).sorted().toArray();
    int left = known.length < 4 ? 0 : 1;
    return Means.of(known, left, known.length - left);
  }
}
