package org.rimebook.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterReferenceTest {

  /** Values of the formula of Tanaka et al. 2001, Metrologia 38, 301-309. */
  @ParameterizedTest
  @CsvSource({
    "0, 999.84283",
    "4, 999.97495",
    "5, 999.96678",
    "10, 999.70270",
    "15, 999.10257",
    "20, 998.20675",
    "25, 997.04702",
    "30, 995.64880",
    "40, 992.21521"
  })
  void densityIsTanakas(double degC, double kgPerM3) {
    assertThat(Water.densityKgPerM3(degC)).isCloseTo(kgPerM3, within(0.000005));
  }

  @ParameterizedTest
  @CsvSource({"-0.1", "40.1", "NaN"})
  void densityIsNotCarriedBeyondTheFormula(double degC) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Water.densityKgPerM3(degC))
        .withMessageContaining("0 to 40 °C");
  }

  /** 1 kg/m² is 1 mm by definition. */
  @Test
  void aLitreStandsFiftyMillimetresHighOverTwoHundredSquareCentimetres() {
    assertThat(Water.depthMm(1, 200)).isEqualTo(50);
    assertThat(Water.massKg(600, 200)).isEqualTo(12);
  }

  @Property
  void massAndDepthGoBothWays(
      @ForAll @DoubleRange(min = 0, max = 100) double kg,
      @ForAll @DoubleRange(min = 100, max = 1000) double areaCm2) {
    assertThat(Water.massKg(Water.depthMm(kg, areaCm2), areaCm2)).isCloseTo(kg, within(1e-9));
  }
}
