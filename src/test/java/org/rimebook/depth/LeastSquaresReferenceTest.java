package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Certified values of the NIST Statistical Reference Datasets, linear least squares
 * (https://www.itl.nist.gov/div898/strd/lls/lls.shtml), and the worked example of JCGM 100:2008
 * (GUM), annex H.3.
 */
class LeastSquaresReferenceTest {

  /** NIST asks for agreement in the digits double precision allows: 1e-9 relative here. */
  private static final double RELATIVE_PERCENT = 1e-7;

  private static void assertCloseTo(double actual, double certified) {
    assertThat(actual).isCloseTo(certified, withinPercentage(RELATIVE_PERCENT));
  }

  /** Pontius: calibration of a load cell, x = load, y = deflection; two runs of 20 loads. */
  private static PolynomialFit pontius() {
    double[] y = {
      .11019, .21956, .32949, .43899, .54803, .65694, .76562, .87487, .98292, 1.09146,
      1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844,
      .11052, .22018, .32939, .43886, .54798, .65739, .76596, .87474, .98300, 1.09150,
      1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829
    };
    double[] x = new double[40];
    Arrays.setAll(x, i -> 150_000.0 * (i % 20 + 1));
    return PolynomialFit.of(x, y, 0, 2);
  }

  @Test
  void pontiusCoefficientsAgreeWithTheCertifiedOnes() {
    PolynomialFit fit = pontius();
    assertCloseTo(fit.coefficient(0), 0.673565789473684E-03);
    assertCloseTo(fit.coefficient(1), 0.732059160401003E-06);
    assertCloseTo(fit.coefficient(2), -0.316081871345029E-14);
  }

  @Test
  void pontiusUncertaintiesAgreeWithTheCertifiedOnes() {
    PolynomialFit fit = pontius();
    assertCloseTo(fit.uncertainty(0), 0.107938612033077E-03);
    assertCloseTo(fit.uncertainty(1), 0.157817399981659E-09);
    assertCloseTo(fit.uncertainty(2), 0.486652849992036E-16);
    assertCloseTo(fit.residualSd(), 0.205177424076185E-03);
    assertCloseTo(fit.rSquared(), 0.999999900178537);
  }

  /** Off-diagonals of (X'X)⁻¹, worked out in exact rational arithmetic from the published data. */
  @Test
  void pontiusCovariancesAgreeWithExactArithmetic() {
    PolynomialFit fit = pontius();
    double variance = fit.residualSd() * fit.residualSd();
    assertCloseTo(fit.covariance(0, 1) / variance, -3.59649122807018E-07);
    assertCloseTo(fit.covariance(0, 2) / variance, 9.74658869395712E-14);
    assertCloseTo(fit.covariance(1, 2) / variance, -1.77210703526493E-19);
  }

  /** Predictions with their uncertainty, worked out from the certified fit; 9 digits known. */
  @Test
  void pontiusPredictionsAgreeWithExactArithmetic() {
    PolynomialFit fit = pontius();
    assertCloseTo(fit.valueAt(1.5e6), 1.09165046428571);
    assertThat(fit.uncertaintyAt(1.0e6)).isCloseTo(4.39359871E-05, within(1e-13));
    assertThat(fit.uncertaintyAt(1.5e6)).isCloseTo(4.86417679E-05, within(1e-13));
    assertThat(fit.uncertaintyAt(3.0e6)).isCloseTo(8.83430256E-05, within(1e-13));
  }

  /**
   * Norris: calibration of an ozone monitor, 36 points, a straight line. The points are from
   * memory; only the right ones give the certified values.
   */
  @Test
  void norrisAgreesWithTheCertifiedValues() {
    double[] y = {
      0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
      0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
      0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
    };
    double[] x = {
      0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
      0.6, 775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
      0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
    };
    PolynomialFit fit = PolynomialFit.of(x, y, 0, 1);
    assertCloseTo(fit.coefficient(0), -0.262323073774029);
    assertCloseTo(fit.coefficient(1), 1.00211681802045);
    assertCloseTo(fit.uncertainty(0), 0.232818234301152);
    assertCloseTo(fit.uncertainty(1), 0.429796848199937E-03);
    assertCloseTo(fit.residualSd(), 0.884796396144373);
    assertCloseTo(fit.rSquared(), 0.999993745883712);
  }

  /** Wampler1: y = 1 + x + … + x⁵ at x = 0 … 20, an exact fit. */
  @Test
  void wampler1CoefficientsAreAllOne() {
    double[] x = new double[21];
    double[] y = new double[21];
    for (int i = 0; i < x.length; i++) {
      x[i] = i;
      y[i] = 1 + i * (1 + i * (1 + i * (1 + i * (1.0 + i))));
    }
    PolynomialFit fit = PolynomialFit.of(x, y, 0, 5);
    for (int power = 0; power <= 5; power++) {
      assertThat(fit.coefficient(power)).isCloseTo(1, within(1e-7));
    }
    // The ordinates reach 3.4 million: this is 15 digits of them.
    assertThat(fit.residualSd()).isLessThan(1e-8);
    assertThat(fit.rSquared()).isCloseTo(1, within(1e-14));
  }

  /** GUM H.3: calibration of a thermometer, b(t) = y1 + y2 (t − t0), t0 = 20 °C. */
  @Test
  void theThermometerOfTheGumAgreesWithItsPublishedValues() {
    double[] t = {
      21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    double[] b = {-.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160};
    PolynomialFit fit = PolynomialFit.of(Arrays.stream(t).map(v -> v - 20).toArray(), b, 0, 1);
    assertThat(fit.coefficient(0)).isCloseTo(-0.1712, within(5e-5));
    assertThat(fit.uncertainty(0)).isCloseTo(0.0029, within(5e-5));
    assertThat(fit.coefficient(1)).isCloseTo(0.00218, within(5e-6));
    assertThat(fit.uncertainty(1)).isCloseTo(0.00067, within(5e-6));
    double correlation = fit.covariance(0, 1) / (fit.uncertainty(0) * fit.uncertainty(1));
    assertThat(correlation).isCloseTo(-0.930, within(5e-4));
    assertThat(fit.residualSd()).isCloseTo(0.0035, within(5e-5));
    assertThat(fit.valueAt(10)).isCloseTo(-0.1494, within(5e-5));
    assertThat(fit.uncertaintyAt(10)).isCloseTo(0.0041, within(5e-5));
  }

  @Test
  void pointsThatDoNotDetermineTheCoefficientsAreRefused() {
    double[] same = {2, 2, 2, 2};
    assertThatThrownBy(() -> PolynomialFit.of(same, same, 1, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("spread");
    assertThatThrownBy(() -> PolynomialFit.of(new double[] {1, 2}, new double[] {1, 2}, 1, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
