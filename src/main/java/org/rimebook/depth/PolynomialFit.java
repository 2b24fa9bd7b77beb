package org.rimebook.depth;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least-squares polynomial y = Σ c_k x^k over a range of powers, with the uncertainty of what it
 * predicts. Solved by QR decomposition of the design matrix with x scaled to at most 1, since the
 * normal equations lose half the digits. Source: JCGM 100:2008 (GUM), 5.1, 5.2 and annex H.3.
 */
public final class PolynomialFit {

  private final int lowestPower;
  private final RealVector coefficients;
  private final RealMatrix covariance;
  private final double residualSd;
  private final double rSquared;

  private PolynomialFit(int lowestPower, Solution solution, double residualSd, double rSquared) {
    this.lowestPower = lowestPower;
    this.coefficients = solution.coefficients();
    this.covariance = solution.unscaledCovariance().scalarMultiply(residualSd * residualSd);
    this.residualSd = residualSd;
    this.rSquared = rSquared;
  }

  private record Solution(RealVector coefficients, RealMatrix unscaledCovariance) {}

  /**
   * Fits a polynomial with the powers from lowest to highest.
   *
   * @param x abscissae, not all zero
   * @param y ordinates, as many
   * @param lowestPower 0 with a constant term, 1 through the origin
   * @param highestPower not below {@code lowestPower}
   * @throws IllegalArgumentException when the points don't outnumber the coefficients, or determine
   *     them
   */
  public static PolynomialFit of(double[] x, double[] y, int lowestPower, int highestPower) {
    int terms = highestPower - lowestPower + 1;
    if (x.length != y.length || x.length <= terms) {
      throw new IllegalArgumentException(
          terms + " coefficients need more points than " + Math.min(x.length, y.length));
    }
    double scale = new ArrayRealVector(x, false).getLInfNorm();
    RealMatrix design = new Array2DRowRealMatrix(x.length, terms);
    for (int row = 0; row < x.length; row++) {
      for (int term = 0; term < terms; term++) {
        design.setEntry(row, term, StrictMath.pow(x[row] / scale, lowestPower + term));
      }
    }
    RealVector ordinates = new ArrayRealVector(y);
    Solution scaled = solve(design, ordinates);
    RealVector residuals = ordinates.subtract(design.operate(scaled.coefficients()));
    double sse = residuals.dotProduct(residuals);
    double residualSd = Math.sqrt(sse / (x.length - terms));
    double rSquared = 1 - sse / sumOfSquares(ordinates, lowestPower == 0);
    return new PolynomialFit(
        lowestPower, unscale(scaled, scale, lowestPower), residualSd, rSquared);
  }

  private static Solution solve(RealMatrix design, RealVector ordinates) {
    int terms = design.getColumnDimension();
    QRDecomposition qr = new QRDecomposition(design, 1e-13);
    if (!qr.getSolver().isNonSingular()) {
      throw new IllegalArgumentException(
          "the points don't determine " + terms + " coefficients: spread them further apart");
    }
    RealVector coefficients = qr.getSolver().solve(ordinates);
    RealMatrix r = qr.getR().getSubMatrix(0, terms - 1, 0, terms - 1);
    RealMatrix inverse = MatrixUtils.inverse(r);
    return new Solution(coefficients, inverse.multiply(inverse.transpose()));
  }

  private static Solution unscale(Solution scaled, double scale, int lowestPower) {
    int terms = scaled.coefficients().getDimension();
    double[] factors = new double[terms];
    for (int term = 0; term < terms; term++) {
      factors[term] = StrictMath.pow(scale, -(lowestPower + term));
    }
    RealMatrix diagonal = MatrixUtils.createRealDiagonalMatrix(factors);
    return new Solution(
        scaled.coefficients().ebeMultiply(new ArrayRealVector(factors)),
        diagonal.multiply(scaled.unscaledCovariance()).multiply(diagonal));
  }

  private static double sumOfSquares(RealVector ordinates, boolean aboutMean) {
    double mean = aboutMean ? ordinates.dotProduct(ones(ordinates)) / ordinates.getDimension() : 0;
    RealVector deviations = ordinates.mapSubtract(mean);
    return deviations.dotProduct(deviations);
  }

  private static RealVector ones(RealVector like) {
    return new ArrayRealVector(like.getDimension(), 1);
  }

  /** The coefficient of x to a power. */
  public double coefficient(int power) {
    return coefficients.getEntry(power - lowestPower);
  }

  /** Standard uncertainty of the coefficient of x to a power. */
  public double uncertainty(int power) {
    return Math.sqrt(covariance(power, power));
  }

  /** Covariance of the coefficients of x to two powers. */
  public double covariance(int power, int otherPower) {
    return covariance.getEntry(power - lowestPower, otherPower - lowestPower);
  }

  /** Residual standard deviation, with points less coefficients degrees of freedom. */
  public double residualSd() {
    return residualSd;
  }

  /** Share of the variation explained: about the mean with a constant term, about zero without. */
  public double rSquared() {
    return rSquared;
  }

  /** The polynomial at x. */
  public double valueAt(double x) {
    return coefficients.dotProduct(powers(x));
  }

  /** Standard uncertainty of the polynomial at x, from that of the coefficients. */
  public double uncertaintyAt(double x) {
    RealVector powers = powers(x);
    return Math.sqrt(powers.dotProduct(covariance.operate(powers)));
  }

  private RealVector powers(double x) {
    RealVector powers = new ArrayRealVector(coefficients.getDimension());
    for (int term = 0; term < powers.getDimension(); term++) {
      powers.setEntry(term, StrictMath.pow(x, lowestPower + term));
    }
    return powers;
  }
}
