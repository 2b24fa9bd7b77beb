package org.rimebook.accumulation;

import org.rimebook.station.Progress;

/**
 * A level smoothed, with the noise and drift it was smoothed for.
 *
 * @param result what the smoother found
 * @param driftMm2PerH variance by which a dry level wanders [mm²/h]
 * @param noiseMm2 variance of each node as it averages out over a quarter of an hour [mm²]
 * @param instantMm2 whole variance of each node's noise [mm²]: no smoothed level is worse
 */
record Smoothing(
    SwitchingSmoother.Result result, double driftMm2PerH, double[] noiseMm2, double[] instantMm2) {

  private static final SwitchingSmoother.Bounds WHOLE = SwitchingSmoother.Bounds.NONE;

  static Smoothing of(LevelNodes level, double[] noiseMm2, double[] instantMm2, Progress progress) {
    double drift = DryDrift.mm2PerH(level, noiseMm2);
    return new Smoothing(
        SwitchingSmoother.smooth(level, noiseMm2, new RainStates(drift), WHOLE, progress),
        drift,
        noiseMm2,
        instantMm2);
  }

  /** Another level smoothed for the same noise and drift. */
  Smoothing of(LevelNodes other, Progress progress) {
    return new Smoothing(
        SwitchingSmoother.smooth(other, noiseMm2, new RainStates(driftMm2PerH), WHOLE, progress),
        driftMm2PerH,
        noiseMm2,
        instantMm2);
  }

  /**
   * Some nodes smoothed within a season.
   *
   * @param level the nodes
   * @param noise their noise
   * @param driftMm2PerH variance by which a dry level wanders [mm²/h]
   * @param bounds what is known where they begin and end
   */
  static Smoothing within(
      LevelNodes level, Noise noise, double driftMm2PerH, SwitchingSmoother.Bounds bounds) {
    return new Smoothing(
        SwitchingSmoother.smooth(
            level, noise.mm2(), new RainStates(driftMm2PerH), bounds, Progress.NONE),
        driftMm2PerH,
        noise.mm2(),
        noise.instantMm2());
  }

  /**
   * Noise by node.
   *
   * @param mm2 as it averages out over a quarter of an hour [mm²]
   * @param instantMm2 the whole of it [mm²]
   */
  record Noise(double[] mm2, double[] instantMm2) {}

  /**
   * How well the levels at the ends of a link are known.
   *
   * @param link the link
   * @param levelMm2 variance of the level by node [mm²]
   */
  CatchSeries.Ends ends(int link, double[] levelMm2) {
    return new CatchSeries.Ends(
        Math.min(levelMm2[link], instantMm2[link]),
        Math.min(levelMm2[link + 1], instantMm2[link + 1]),
        result.gain()[link],
        0);
  }
}
