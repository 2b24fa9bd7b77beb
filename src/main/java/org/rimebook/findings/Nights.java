package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.station.Channel;

/**
 * What wires show from midnight to six, when the sun doesn't move them, one value a night; and how
 * much of their movement around noon it was.
 */
final class Nights {

  static final long DAY_MS = 86_400_000;
  private static final long SIX_HOURS_MS = DAY_MS / 4;
  private static final long NOON_FROM_MS = 10 * 3_600_000;
  private static final long NOON_TO_MS = 16 * 3_600_000;

  /** From night to night no creep goes further, but a shift or a visit does [mm]; own choice. */
  private static final double AT_ONCE_MM = 0.5;

  /** Share of a night's blocks with both wires; own choice. */
  private static final double LEAST_SHARE = 0.3;

  private final Blocks blocks;
  private final long firstMs;
  private final int count;
  private final double[] temperatureC;

  Nights(Scene scene) {
    this.blocks = scene.blocks();
    long offsetMs = scene.sheet().utcOffset().getTotalSeconds() * 1000L;
    long localMs = blocks.startMs(0) + offsetMs;
    this.firstMs = Math.floorDiv(localMs + DAY_MS - 1, DAY_MS) * DAY_MS - offsetMs;
    this.count = (int) Math.max(0, (blocks.startMs(blocks.size()) - firstMs) / DAY_MS);
    double[] channel = blocks.channel(Channel.AIR_TEMPERATURE);
    this.temperatureC = new double[count];
    for (int night = 0; night < count; night++) {
      temperatureC[night] = channel.length == 0 ? Double.NaN : mean(channel, night);
    }
  }

  private double mean(double[] values, int night) {
    return Arrays.stream(
            values, blocks.at(startMs(night)), blocks.at(startMs(night) + SIX_HOURS_MS - 1) + 1)
        .filter(Double::isFinite)
        .average()
        .orElse(Double.NaN);
  }

  int count() {
    return count;
  }

  /** Midnight a night starts with [ms since epoch]. */
  long startMs(int night) {
    return firstMs + night * DAY_MS;
  }

  /** Air temperature [°C]; NaN when it isn't known. */
  double temperatureC(int night) {
    return temperatureC[night];
  }

  /** Segment of the level in a night; −1 when there is none. */
  int segment(int night) {
    return blocks.segment(blocks.at(startMs(night) + SIX_HOURS_MS / 2));
  }

  /** Mean difference of two wires [mm]; NaN when they were seldom both in use. */
  double differenceMm(int one, int other, int night) {
    return difference(one, other, startMs(night), startMs(night) + SIX_HOURS_MS);
  }

  /**
   * By how much the difference of two wires is greater around noon than at night [mm]; 0 when it
   * isn't known or the difference shifts that day.
   */
  double noonMm(int one, int other, int night) {
    long midnight = startMs(night);
    double noon = difference(one, other, midnight + NOON_FROM_MS, midnight + NOON_TO_MS);
    double before = differenceMm(one, other, night);
    double after = night + 1 < count ? differenceMm(one, other, night + 1) : before;
    double mm = noon - before;
    return Double.isFinite(mm) && !(Math.abs(after - before) > AT_ONCE_MM) ? mm : 0;
  }

  /** Mean depth two wires show [mm]. */
  double depthMm(int one, int other, int night) {
    double sum = 0;
    int known = 0;
    int to = blocks.at(startMs(night) + SIX_HOURS_MS - 1) + 1;
    for (int block = blocks.at(startMs(night)); block < to; block++) {
      double mm = 0.5 * (blocks.depthMm(one, block) + blocks.depthMm(other, block));
      known += Double.isFinite(mm) ? 1 : 0;
      sum += Double.isFinite(mm) ? mm : 0;
    }
    return sum / known;
  }

  private double difference(int one, int other, long fromMs, long toMs) {
    double sum = 0;
    int known = 0;
    int from = blocks.at(fromMs);
    int to = blocks.at(toMs - 1) + 1;
    for (int block = from; block < to; block++) {
      double mm = blocks.depthMm(one, block) - blocks.depthMm(other, block);
      known += Double.isFinite(mm) ? 1 : 0;
      sum += Double.isFinite(mm) ? mm : 0;
    }
    return known >= LEAST_SHARE * (to - from) && known > 0 ? sum / known : Double.NaN;
  }
}
