package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.station.Channel;

/**
 * The supply's voltage, where it is measured: a logger that falls silent after it sagged has lost
 * its power.
 *
 * @param blocks blocks of the season
 * @param volts mean voltage by block [V]; no elements when it isn't measured
 * @param usualV its median [V]; NaN when it isn't known
 */
record Supply(Blocks blocks, double[] volts, double usualV) {

  /** Voltage before silence that far below the usual one tells of the supply; own choice. */
  private static final double SAG_V = 0.5;

  private static final long BEFORE_MS = 3_600_000;

  static Supply of(Scene scene) {
    double[] volts = scene.blocks().channel(Channel.SUPPLY_VOLTAGE);
    double[] known = Arrays.stream(volts).filter(Double::isFinite).toArray();
    double usualV = known.length == 0 ? Double.NaN : Robust.medianInPlace(known, known.length);
    return new Supply(scene.blocks(), volts, usualV);
  }

  /** Mean voltage in the hour up to a reading [V]; NaN when it isn't known. */
  double beforeV(long stampMs) {
    int last = blocks.at(stampMs - 1);
    int from = Math.max(0, last - (int) (BEFORE_MS / blocks.lengthMs()));
    return volts.length == 0
        ? Double.NaN
        : Arrays.stream(volts, from, last + 1)
            .filter(Double::isFinite)
            .average()
            .orElse(Double.NaN);
  }

  /** Whether the supply had sagged up to a reading. */
  boolean saggedBefore(long stampMs) {
    return beforeV(stampMs) < usualV - SAG_V;
  }
}
