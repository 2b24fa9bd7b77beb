package org.rimebook.practice.published;

/**
 * The neutral aggregating filter with its original threshold P* = 0.1 mm, on five-minute medians of
 * the mean of the wires.
 *
 * <p>Since it keeps the net change of level, it takes evaporation off the precipitation.
 *
 * <p>Source: Pan et al. 2016, The Cryosphere 10, 2347; Smith et al. 2019; Ross, Smith & Barr 2020,
 * Atmos. Meas. Tech. 13, 2979. Five-minute medians are our choice; see {@link Increments} for the
 * order in which increments are settled.
 */
public final class NeutralAggregatingFilter implements CatchMethod {

  private static final double THRESHOLD_MM = 0.1;

  @Override
  public String name() {
    return "neutral aggregating filter";
  }

  @Override
  public double[] hourlyCatchMm(WireLevels levels, HourGrid grid) {
    WireLevels mean = FiveMinuteMedians.of(WireMean.of(levels));
    double[] levelMm = new double[mean.size()];
    for (int row = 0; row < levelMm.length; row++) {
      levelMm[row] = mean.depthMm(0, row);
    }
    double[] settledMm = Increments.ofLevels(levelMm).settle(THRESHOLD_MM).incrementMm();
    double[] hourly = new double[grid.hours()];
    for (int i = 0; i < settledMm.length; i++) {
      grid.add(hourly, mean.stampMs(i + 1), settledMm[i]);
    }
    return hourly;
  }
}
