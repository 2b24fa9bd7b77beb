package org.rimebook.findings;

import java.util.Optional;
import org.rimebook.station.Channel;
import org.rimebook.station.Words;

/**
 * Whether air temperature and supply voltage go on across a hole as if no time had passed: how
 * seldom they differ so little over as long at other days of the season, by the same time of day.
 */
final class Continuity {

  /** Holes shorter tell nothing: the weather hardly changes [ms]; own choice. */
  private static final long LEAST_MS = 60 * 60_000;

  private static final long MOST_MS = 3 * 86_400_000L;

  /** So seldom by chance; own choice. */
  private static final double SELDOM = 1 / 300.0;

  private static final long DAY_MS = 86_400_000;
  private static final int FEWEST_DAYS = 30;

  /** Smallest differences the channels are logged with. */
  private static final double STEP_DEG_C = 0.1;

  private static final double STEP_V = 0.02;

  private final Blocks blocks;
  private final double[] temperature;
  private final double[] supply;

  Continuity(Scene scene) {
    this.blocks = scene.blocks();
    this.temperature = blocks.channel(Channel.AIR_TEMPERATURE);
    this.supply = blocks.channel(Channel.SUPPLY_VOLTAGE);
  }

  /** Words on what goes on; empty when it doesn't, or nothing can tell. */
  Optional<String> goesOn(ClockSteps.Step hole) {
    if (hole.byMs() < LEAST_MS || hole.byMs() > MOST_MS) {
      return Optional.empty();
    }
    int before = blocks.at(hole.atMs() - 1);
    int after = blocks.at(hole.resumedMs() - 1);
    double seldom =
        chance(temperature, before, after, STEP_DEG_C) * chance(supply, before, after, STEP_V);
    if (!(seldom <= SELDOM)) {
      return Optional.empty();
    }
    return Optional.of(
        Words.text(
            "across it the air temperature changes by %.1f °C and the supply by %.2f V, which both"
                + " do so little in as long once in %.0f times",
            Math.abs(temperature[after] - temperature[before]),
            Math.abs(supply[after] - supply[before]),
            1 / seldom));
  }

  /** Share of the days on which a channel changed as little over as long by the time of day. */
  private double chance(double[] values, int before, int after, double step) {
    int day = (int) (DAY_MS / blocks.lengthMs());
    if (values.length == 0 || day == 0) {
      return 1;
    }
    double across = Math.max(step, Math.abs(values[after] - values[before]));
    int days = 0;
    int alike = 1;
    for (int start = before % day; start + after - before < values.length; start += day) {
      double other = Math.abs(values[start + after - before] - values[start]);
      if (start != before && !Double.isNaN(other)) {
        days++;
        alike += other <= across ? 1 : 0;
      }
    }
    return days < FEWEST_DAYS || Double.isNaN(across) ? 1 : alike / (double) (days + 1);
  }
}
