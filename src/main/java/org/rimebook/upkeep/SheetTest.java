package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

import java.util.List;
import org.apache.commons.math3.distribution.FDistribution;
import org.rimebook.depth.CalibrationCurve;

/**
 * Whether a wire needs a new sheet. Two things have to be so: check weights contradict A and B of
 * the sheet beyond their own scatter (F-test of the hypothesis that the sheet's A and B hold
 * against the fitted ones, level 1 %, own choice), and that matters: what the bucket gains from
 * empty to some weight comes out more than 0.5 % off, which is what three wires together are
 * usually good for (Duchon, Wade and Cole 2003). A zero that has moved alone asks for no new sheet,
 * only for a new f0, since gains don't depend on it to first order.
 *
 * @param fRatio the F statistic; infinite when the fit leaves no scatter
 * @param freedom degrees of freedom left by the fit
 * @param p probability of a greater one if the sheet holds
 * @param worstPct largest difference of what the bucket gains by sheet and by fit [%]
 * @param worstAtMm weight at which that is [mm]
 * @param zeroMovedHz f0 read less f0 of the sheet [Hz]
 */
public record SheetTest(
    double fRatio, int freedom, double p, double worstPct, double worstAtMm, double zeroMovedHz) {

  /** Probability below which weights contradict a sheet; own choice. */
  public static final double LEVEL = 0.01;

  /** A difference of what the bucket gains that matters [%]; Duchon, Wade and Cole 2003. */
  public static final double MATTERS_PCT = 0.5;

  private static final int TESTED = 2;

  /**
   * Tests a sheet by weights.
   *
   * @param sheet the curve of the sheet
   * @param fit the fit to the weights
   */
  public static SheetTest of(CalibrationCurve sheet, WeightFit fit) {
    CalibrationCurve fitted = fit.fit().curve();
    CalibrationCurve moved =
        new CalibrationCurve(sheet.aMmPerHz(), sheet.bMmPerHz2(), fitted.f0Hz());
    List<WeightFit.Residual> weighed =
        fit.residuals().stream().filter(r -> r.depthMm() > 0).toList();
    double ofFit = weighed.stream().mapToDouble(r -> r.residualMm() * r.residualMm()).sum();
    double ofSheet =
        weighed.stream()
            .mapToDouble(r -> r.depthMm() - moved.depthMm(r.frequencyHz()))
            .map(mm -> mm * mm)
            .sum();
    int freedom = weighed.size() - TESTED;
    double gained = Math.max(0, ofSheet - ofFit) / TESTED;
    double fRatio = gained == 0 ? 0 : gained / (ofFit / freedom);
    double worst = 0;
    double worstAt = 0;
    for (WeightFit.Residual each : weighed) {
      double hz = each.frequencyHz();
      double pct = 100 * (moved.depthMm(hz) / fitted.depthMm(hz) - 1);
      if (Math.abs(pct) > Math.abs(worst)) {
        worst = pct;
        worstAt = each.depthMm();
      }
    }
    return new SheetTest(
        fRatio, freedom, p(fRatio, freedom), worst, worstAt, fitted.f0Hz() - sheet.f0Hz());
  }

  private static double p(double fRatio, int freedom) {
    return Double.isInfinite(fRatio)
        ? 0
        : 1 - new FDistribution(null, TESTED, freedom).cumulativeProbability(fRatio);
  }

  /** Whether the wire needs a new sheet. */
  public boolean needsNewSheet() {
    return p < LEVEL && Math.abs(worstPct) > MATTERS_PCT;
  }

  /** The outcome in words. */
  public String words() {
    String numbers =
        text(
            " (F = %.2f with 2 and %d degrees of freedom, p = %.3f; at most %+.2f %% of what the"
                + " bucket gains, at %.0f mm)",
            fRatio, freedom, p, worstPct, worstAtMm);
    if (needsNewSheet()) {
      return "The wire needs a new sheet: the weights contradict it and it matters" + numbers + ".";
    }
    return (p < LEVEL
            ? "The weights differ from the sheet by more than they scatter, but too little to matter"
            : "The weights don't contradict the sheet")
        + numbers
        + ".";
  }
}
