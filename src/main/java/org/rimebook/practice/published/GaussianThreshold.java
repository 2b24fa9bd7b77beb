package org.rimebook.practice.published;

/**
 * The mean of the wires smoothed by a Gaussian in time; of the rises from hour to hour, those below
 * a threshold are zero.
 *
 * <p>Source: the quality control of the solid precipitation intercomparison (Nitu et al. 2018, WMO
 * IOM Report 131), which preferred a Gaussian in time among the smoothers it tried. The width and
 * the threshold weren't found in the sources; ours are a standard deviation of {@value #SD_MIN}
 * min, cut off at three of them, and {@value #THRESHOLD_MM} mm in an hour.
 */
public final class GaussianThreshold implements CatchMethod {

  static final int SD_MIN = 3;
  static final double THRESHOLD_MM = 0.05;

  private static final double SD_MS = SD_MIN * 60_000.0;
  private static final long REACH_MS = 3 * SD_MIN * 60_000L;

  @Override
  public String name() {
    return "Gaussian smoothing with a threshold";
  }

  @Override
  public double[] hourlyCatchMm(WireLevels levels, HourGrid grid) {
    WireLevels mean = WireMean.of(levels);
    double[] hourly = new double[grid.hours()];
    if (mean.size() == 0) {
      return hourly;
    }
    BoundaryLevels boundaries = new BoundaryLevels(mean);
    double before = smoothedMm(boundaries, grid.boundaryMs(0));
    for (int hour = 0; hour < hourly.length; hour++) {
      double after = smoothedMm(boundaries, grid.boundaryMs(hour + 1));
      hourly[hour] = after - before < THRESHOLD_MM ? 0 : after - before;
      before = after;
    }
    return hourly;
  }

  private static double smoothedMm(BoundaryLevels boundaries, long instantMs) {
    return boundaries.aroundMm(instantMs, REACH_MS, GaussianThreshold::weight);
  }

  private static double weight(long distanceMs) {
    double sds = distanceMs / SD_MS;
    return StrictMath.exp(-0.5 * sds * sds);
  }
}
