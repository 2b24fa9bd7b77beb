package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.findings.SteepRises.Rise;
import org.rimebook.station.Channel;

/**
 * Whether a steep rise is likelier a cap of snow that slid in at the first thaw, or in the sun,
 * than a shower, by air temperature and by how the supply was charged, which is little under cloud.
 */
final class ThawSigns {

  private static final long HOUR_MS = 3_600_000;

  /** More than it snows in half an hour near 0 °C [mm]; own choice. */
  private static final double LEAST_MM = 2;

  private static final long LONGEST_MS = HOUR_MS / 2;
  private static final long SHORTEST_STILL_MS = 6 * HOUR_MS;
  private static final long LONGEST_STILL_MS = 48 * HOUR_MS;

  /** Own choices [°C]. */
  private static final double COLD_DEG_C = -1;

  private static final double THAW_DEG_C = 0;
  private static final double RAIN_DEG_C = 3;

  /** Share of the usual charge by day under cloud; own choice. */
  private static final double CLOUD = 0.6;

  private static final double RESTING_QUANTILE = 0.1;
  private static final double LEAST_CHARGE_V = 0.15;

  /** Days on each side whose charge at the same hour is compared. */
  private static final int DAYS = 10;

  private final Blocks blocks;
  private final double[] airDegC;
  private final double[] supplyV;
  private final double restingV;

  private ThawSigns(Scene scene) {
    blocks = scene.blocks();
    airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    supplyV = blocks.channel(Channel.SUPPLY_VOLTAGE);
    double[] sorted = Arrays.stream(supplyV).filter(Double::isFinite).sorted().toArray();
    restingV = sorted.length == 0 ? Double.NaN : sorted[(int) (RESTING_QUANTILE * sorted.length)];
  }

  static ThawSigns of(Scene scene) {
    return new ThawSigns(scene);
  }

  /** Whether there is anything to go by. */
  boolean known() {
    return Arrays.stream(airDegC).anyMatch(Double::isFinite) && Double.isFinite(restingV);
  }

  double airDegC(int from, int to) {
    return mean(airDegC, from, to);
  }

  /** Mean of what is known; NaN when nothing is. */
  static double mean(double[] values, int from, int to) {
    int end = Math.min(values.length, to);
    return from >= end
        ? Double.NaN
        : Arrays.stream(values, from, end).filter(Double::isFinite).average().orElse(Double.NaN);
  }

  /** Whether all signs of a cap are there. */
  boolean lets(Rise rise) {
    int hour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    long stillMs = (rise.from() - rise.stillFrom()) * blocks.lengthMs();
    long riseMs = (rise.to() - rise.from()) * blocks.lengthMs();
    boolean shaped =
        rise.mm() >= LEAST_MM
            && riseMs <= LONGEST_MS
            && stillMs >= SHORTEST_STILL_MS
            && stillMs <= LONGEST_STILL_MS
            && standsAfter(rise, hour);
    if (!shaped) {
      return false;
    }
    int back = rise.stillFrom();
    boolean cold = airDegC(back, rise.from()) <= COLD_DEG_C;
    boolean cloudy = cold && charge(back, rise.from()) < CLOUD;
    double release = airDegC(rise.from(), rise.to());
    double warmest = Arrays.stream(airDegC, rise.stillFrom(), rise.from()).max().orElse(Double.NaN);
    return cloudy && release >= THAW_DEG_C && release >= warmest - 1 && release <= RAIN_DEG_C;
  }

  private boolean standsAfter(Rise rise, int hour) {
    double after = Fillings.medianMm(blocks, rise.to(), rise.to() + hour);
    double later = Fillings.medianMm(blocks, rise.to() + 2 * hour, rise.to() + 3 * hour);
    return Math.abs(later - after) <= 0.25;
  }

  /** Charge of the supply against the best at the same hours of the days around; NaN by night. */
  private double charge(int from, int to) {
    int day = (int) (24 * HOUR_MS / blocks.lengthMs());
    double got = 0;
    double could = 0;
    for (int block = from; block < Math.min(to, supplyV.length); block++) {
      double best = 0;
      for (int days = -DAYS; days <= DAYS; days++) {
        int other = block + days * day;
        if (other >= 0 && other < supplyV.length && supplyV[other] - restingV > best) {
          best = supplyV[other] - restingV;
        }
      }
      if (best > LEAST_CHARGE_V && Double.isFinite(supplyV[block])) {
        got += Math.max(0, supplyV[block] - restingV);
        could += best;
      }
    }
    return could == 0 ? Double.NaN : got / could;
  }
}
