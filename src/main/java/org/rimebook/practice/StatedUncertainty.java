package org.rimebook.practice;

/**
 * The standard uncertainty that an estimator states with its totals. Takes copies.
 *
 * @param hourlyMm of each hour [mm]
 * @param dailyMm of each block of 24 hours from the first [mm]
 * @param seasonMm of the season's total [mm]
 */
public record StatedUncertainty(double[] hourlyMm, double[] dailyMm, double seasonMm) {

  public StatedUncertainty {
    hourlyMm = hourlyMm.clone();
    dailyMm = dailyMm.clone();
  }

  @Override
  public double[] hourlyMm() {
    return hourlyMm.clone();
  }

  @Override
  public double[] dailyMm() {
    return dailyMm.clone();
  }

  /**
   * Holds it to the truth.
   *
   * @param truthMm what fell, by hour [mm]
   * @param estimateMm what the estimator says of the same hours [mm]
   * @throws IllegalArgumentException when hours or days don't agree in number
   */
  public Honesty against(double[] truthMm, double[] estimateMm) {
    double seasonError = Amounts.total(estimateMm) - Amounts.total(truthMm);
    return new Honesty(
        Coverage.of(truthMm, estimateMm, hourlyMm),
        Coverage.of(Amounts.daily(truthMm), Amounts.daily(estimateMm), dailyMm),
        Math.abs(seasonError) / seasonMm);
  }

  /**
   * How honest the uncertainty is.
   *
   * @param hours wet hours within it
   * @param days wet days within it
   * @param seasonErrorInU error of the season's total, in its own standard uncertainty
   */
  public record Honesty(Coverage hours, Coverage days, double seasonErrorInU) {}
}
