package org.rimebook.practice.published;

/**
 * A running maximum with a hysteresis of 0.2 mm: a rise is accepted when the mean of the wires
 * stands at least that far above the last level accepted. The mark never falls, so what evaporated
 * has to fall again before anything counts.
 *
 * <p>Source: common practice; the size of the hysteresis too. The first level is where it starts.
 */
public final class HighWaterMark implements CatchMethod {

  private static final double HYSTERESIS_MM = 0.2;

  /** Far below what a wire resolves; keeps a rise of exactly the hysteresis from being refused. */
  private static final double ROUNDING_MM = 1e-9;

  @Override
  public String name() {
    return "0.2 mm high-water mark";
  }

  @Override
  public double[] hourlyCatchMm(WireLevels levels, HourGrid grid) {
    WireLevels mean = WireMean.of(levels);
    double[] hourly = new double[grid.hours()];
    double mark = mean.size() == 0 ? 0 : mean.depthMm(0, 0);
    for (int row = 1; row < mean.size(); row++) {
      double rise = mean.depthMm(0, row) - mark;
      if (rise >= HYSTERESIS_MM - ROUNDING_MM) {
        grid.add(hourly, mean.stampMs(row), rise);
        mark += rise;
      }
    }
    return hourly;
  }
}
