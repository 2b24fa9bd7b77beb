package org.rimebook.accumulation;

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

  static Smoothing of(LevelNodes level, double[] noiseMm2, double[] instantMm2) {
    double drift = DryDrift.mm2PerH(level, noiseMm2);
    return new Smoothing(
        SwitchingSmoother.smooth(level, noiseMm2, new RainStates(drift)),
        drift,
        noiseMm2,
        instantMm2);
  }

  /** Another level smoothed for the same noise and drift. */
  Smoothing of(LevelNodes other) {
    return new Smoothing(
        SwitchingSmoother.smooth(other, noiseMm2, new RainStates(driftMm2PerH)),
        driftMm2PerH,
        noiseMm2,
        instantMm2);
  }

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
