package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.rimebook.findings.SteepRises.Rise;
import org.rimebook.station.Channel;

/**
 * How much likelier a rise of the level is snow that slid in than what fell just then, going by the
 * depth of snow beside the gauge, air temperature and, where it is measured, humidity. One ratio of
 * likelihoods: under a cap, snow on the ground grew by the water of the rise at some time while the
 * level stood still, and not with the rise; under a shower it grew with the rise if that was snow.
 */
final class CapOdds {

  private static final double HOUR_MS = 3_600_000;
  private static final double CM_PER_M = 100;

  /**
   * Depth of new snow to the water a gauge catches of it [cm/mm], with its spread: densities of 50
   * to 150 kg/m³ (Judson and Doesken 2000, Bull. Am. Meteorol. Soc. 81, 1577–1587, from memory).
   */
  private static final double CM_PER_MM = 1.1;

  private static final double CM_PER_MM_SD = 0.5;

  /** Lying snow sinks by a centimetre or three a day, fresh snow by more [cm/h]; own choice. */
  private static final double SETTLES_CM = 0.08;

  private static final double SETTLES_SD_CM = 0.1;

  /** And melts, 2 to 5 mm of water a day and °C at 200 to 400 kg/m³ [cm/(h °C)] (from memory). */
  private static final double MELTS_CM = 0.05;

  private static final double MELTS_SD_CM = 0.05;

  /**
   * Share of snow in precipitation by air temperature: half at 1.0 °C (Jennings et al. 2018, Nat.
   * Commun. 9, 1148), its slope there at saturation from memory [1/°C].
   */
  private static final double HALF_SNOW_DEG_C = 1;

  private static final double SNOW_PER_DEG_C = 1.41;

  /**
   * So much air above freezing lets a cap go, one in e of them holding longer [°C h]; own choice.
   */
  private static final double MELTS_CAP_DEG_C_HOURS = 12;

  private static final double NO_CAP_DEG_C_HOURS = 24;

  /**
   * One snowfall in five doesn't show on the ground beside the gauge, where wind takes it; own
   * choice.
   */
  private static final double UNSEEN = 0.2;

  /**
   * Once in a hundred such times snow lies on the ground that the gauge never catches, the inlet
   * being shut for good or wind having laid it there, by some ten centimetres; own choice.
   */
  private static final double UNCAUGHT = 0.01;

  private static final double UNCAUGHT_CM = 10;

  /** One cap in ten lets go while it snows on, part of the rise being that [cm/mm]; own choice. */
  private static final double SNOWS_ON = 0.1;

  private static final double SNOWS_ON_CM = 0.4;

  /** Rain on a cap to snow on it; own choice. */
  private static final double RAIN = 0.1;

  /** What is held up falls within so many hours. */
  private static final int[] FALLS_HOURS = {1, 3, 9};

  /** A smaller rise in an hour may be the level's wavering [mm]. */
  private static final double LEAST_MM = 0.1;

  private static final int LEAST_HOURS = 4;
  private static final double TINY = 1e-9;

  private final Blocks blocks;
  private final double[] snowCm;
  private final double[] airDegC;
  private final double[] percent;
  private final SnowWander wander;
  private final WetAir wetAir;

  private CapOdds(Blocks blocks, double[] snowCm) {
    this.blocks = blocks;
    this.snowCm = snowCm;
    airDegC = blocks.channel(Channel.AIR_TEMPERATURE);
    percent = blocks.channel(Channel.RELATIVE_HUMIDITY);
    int perHour = RiseHours.perHour(blocks);
    wander = SnowWander.of(snowCm, perHour, perHour * blocks.lengthMs() / HOUR_MS);
    wetAir = WetAir.of(blocks);
  }

  /** What tells of caps in a season. */
  static CapOdds of(Blocks blocks) {
    double[] metres = blocks.channel(Channel.SNOW_DEPTH);
    return new CapOdds(blocks, Arrays.stream(metres).map(m -> CM_PER_M * m).toArray());
  }

  /**
   * What speaks for a cap.
   *
   * @param logOdds logarithm of how much likelier a cap is than a shower
   * @param back the block back to which a cap may have held
   * @param since the block from which on what was held up most likely fell
   */
  record Odds(double logOdds, int back, int since) {}

  /** The odds of a rise; none where the depth of snow isn't known around it. */
  Optional<Odds> of(Rise rise) {
    if (snowCm.length == 0) {
      return Optional.empty();
    }
    RiseHours hours = RiseHours.of(blocks, rise, airDegC, NO_CAP_DEG_C_HOURS);
    double[] depthCm = hours.middles(snowCm);
    boolean before = known(depthCm, 0, hours.rise()) >= Math.max(LEAST_HOURS, hours.rise() / 2);
    return before && known(depthCm, hours.rise(), hours.size()) > 0
        ? Optional.of(new Around(hours, rise, depthCm).odds())
        : Optional.empty();
  }

  private static long known(double[] values, int from, int to) {
    return Arrays.stream(values, from, to).filter(Double::isFinite).count();
  }

  private static double snowShare(double degC) {
    return Double.isNaN(degC)
        ? 0.5
        : 1 / (1 + StrictMath.exp(SNOW_PER_DEG_C * (degC - HALF_SNOW_DEG_C)));
  }

  /** Mean of some hours; NaN when one isn't known. */
  private static double mean(double[] values, int from, int to) {
    return Arrays.stream(values, from, to).sum() / (to - from);
  }

  private static int best(double[] values) {
    int best = 0;
    for (int i = 1; i < values.length; i++) {
      best = values[i] > values[best] ? i : best;
    }
    return best;
  }

  /** Logarithm of the mean of what some logarithms are of. */
  private static double logMean(double[] logs) {
    double most = logs[best(logs)];
    double sum = Arrays.stream(logs).map(log -> StrictMath.exp(log - most)).sum();
    return most + StrictMath.log(sum / logs.length);
  }

  private static double logSum(double one, double other) {
    double most = Math.max(one, other);
    return most + StrictMath.log1p(StrictMath.exp(Math.min(one, other) - most));
  }

  /**
   * A time in which something may have fallen.
   *
   * @param from its first hour
   * @param to the hour after its last
   * @param humid logarithm of how much likelier its humidity is with precipitation
   * @param snowShare share of snow at its temperature
   */
  private record Fall(int from, int to, double humid, double snowShare) {

    /** How much of it has fallen by each hour, from 0 to 1. */
    double[] share(int hours) {
      double[] share = new double[hours];
      Arrays.setAll(share, i -> Math.max(0, Math.min(1, (i - from + 1.0) / (to - from))));
      return share;
    }
  }

  /** What was measured around one rise. */
  private final class Around {
    private final RiseHours hours;
    private final Rise rise;
    private final double[] degC;
    private final double[] wet;
    private final double[] risesMm;
    private final double snowShare;
    private final SnowTrace trace;
    private final SnowTrace snowing;
    private final double snowsOn;

    Around(RiseHours hours, Rise rise, double[] depthCm) {
      this.hours = hours;
      this.rise = rise;
      degC = hours.means(airDegC);
      double atRise = Means.of(airDegC, rise.from(), rise.to());
      degC[hours.rise()] = atRise;
      snowShare = snowShare(atRise);
      wet = Arrays.stream(hours.means(percent)).map(wetAir::logOdds).toArray();
      risesMm = hours.risesMm(LEAST_MM);
      trace = trace(depthCm);
      snowing = trace.allowing(later(0), SNOWS_ON_CM);
      snowsOn = StrictMath.log(SNOWS_ON) + trace.logOdds(later(0), 0, SNOWS_ON_CM);
    }

    /** The depth without what snow usually does: what the gauge caught too, settling, melting. */
    private SnowTrace trace(double[] depthCm) {
      int size = hours.size();
      double[] settling = new double[size];
      double[] melting = new double[size];
      double[] caught = new double[size];
      double[] walk = new double[size];
      double[] left = new double[size];
      for (int i = 0; i < size; i++) {
        double warm = hours.step(i) * (degC[i] > 0 ? degC[i] : 0);
        boolean counts = i > 0 && i <= hours.still();
        settling[i] = i == 0 ? 0 : settling[i - 1] + hours.step(i);
        melting[i] = (i == 0 ? 0 : melting[i - 1]) + warm;
        caught[i] = (i == 0 ? 0 : caught[i - 1]) + (counts ? risesMm[i] * snowShare(degC[i]) : 0);
        walk[i] = wander.walkCm2() * hours.step(i) + MELTS_SD_CM * MELTS_SD_CM * warm * warm;
        left[i] =
            depthCm[i] + SETTLES_CM * settling[i] + MELTS_CM * melting[i] - CM_PER_MM * caught[i];
      }
      SnowTrace snow = new SnowTrace(left, walk, wander.readingCm2());
      snow.allow(settling, SETTLES_SD_CM);
      snow.allow(melting, MELTS_SD_CM);
      snow.allow(caught, CM_PER_MM_SD);
      return snow;
    }

    Odds odds() {
      List<Fall> falls = falls();
      if (falls.isEmpty()) {
        return new Odds(Double.NEGATIVE_INFINITY, rise.from(), rise.from());
      }
      double[] held = falls.stream().mapToDouble(this::cap).toArray();
      int since = falls.get(best(held)).from();
      double odds = logMean(held) - shower(falls);
      return new Odds(odds, hours.firstBlock(hours.still()), hours.firstBlock(since));
    }

    /** All times in which something may have fallen while the level stood still. */
    private List<Fall> falls() {
      List<Fall> falls = new ArrayList<>();
      for (int length : FALLS_HOURS) {
        for (int from = hours.still(); from + Math.max(2, length) <= hours.rise(); from++) {
          int to = from + length;
          falls.add(new Fall(from, to, mean(wet, from, to), snowShare(mean(degC, from, to))));
        }
      }
      return falls;
    }

    /** Log likelihood of a shower, against that nothing fell at all. */
    private double shower(List<Fall> falls) {
      double[] lost =
          falls.stream()
              .mapToDouble(
                  fall ->
                      fall.humid()
                          + StrictMath.log(fall.snowShare() + TINY)
                          + trace.logOdds(fall.share(hours.size()), 0, UNCAUGHT_CM))
              .toArray();
      SnowTrace without = trace.allowing(falls.get(best(lost)).share(hours.size()), UNCAUGHT_CM);
      double humid = wetAir.logOdds(Means.of(percent, rise.from(), rise.to()));
      double uncaught = StrictMath.log(UNCAUGHT) + logMean(lost) + fell(without);
      return logSum(fell(trace), uncaught) + humid;
    }

    /** The same of what fell with the rise, beside whatever else moved the depth. */
    private double fell(SnowTrace beside) {
      double snow = beside.logOdds(later(0), CM_PER_MM, CM_PER_MM_SD);
      double rain = StrictMath.log(Math.max(UNSEEN, 1 - snowShare));
      return logSum(rain, StrictMath.log(snowShare + TINY) + snow);
    }

    /** The same of a cap that held up what fell at some time. */
    private double cap(Fall fall) {
      double[] grown = later(rise.mm());
      double[] share = fall.share(grown.length);
      double degCHours = 0;
      for (int i = 0; i < grown.length; i++) {
        grown[i] = snowShare * grown[i] + rise.mm() * share[i];
        boolean holding = i >= fall.to() && i < hours.rise();
        degCHours += holding && degC[i] > 0 ? degC[i] * hours.step(i) : 0;
      }
      double over = StrictMath.log(1 - SNOWS_ON) + trace.logOdds(grown, CM_PER_MM, CM_PER_MM_SD);
      double on = snowsOn + snowing.logOdds(grown, CM_PER_MM, CM_PER_MM_SD);
      double snow = StrictMath.log(fall.snowShare() + TINY) + logSum(over, on);
      double rain = StrictMath.log(RAIN * (1 - fall.snowShare()) + TINY);
      return logSum(snow, rain) + fall.humid() - degCHours / MELTS_CAP_DEG_C_HOURS;
    }

    /** What the level rose by from the rise on, beyond what slid in, by hour [mm]. */
    private double[] later(double slidMm) {
      double[] mm = new double[hours.size()];
      double sum = 0;
      for (int i = hours.rise(); i < mm.length; i++) {
        sum += i == hours.rise() ? Math.max(rise.mm(), risesMm[i]) : risesMm[i];
        mm[i] = sum - slidMm;
      }
      return mm;
    }
  }
}
