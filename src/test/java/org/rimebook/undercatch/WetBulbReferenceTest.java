package org.rimebook.undercatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The wet bulb as two others have it: PsychroLib 2.5.0 (from the package registry of JavaScript),
 * which follows the ASHRAE Handbook - Fundamentals 2017, with humidity over ice where it reckons
 * so; and the psychrometer equation of WMO-No. 8 at sea level (constants from memory).
 */
class WetBulbReferenceTest {

  @ParameterizedTest
  @CsvSource({
    "20, 50, 0, 13.7834",
    "5, 60, 0, 2.1151",
    "2, 60, 0, -0.6780",
    "2, 90, 0, 1.3850",
    "1, 95, 0, 0.7071",
    "3, 40, 1500, -1.7199",
    "0.5, 80, 2500, -0.9107",
    "4, 100, 300, 4.0000",
    "-3, 60, 900, -5.0476",
    "-1, 85, 900, -1.8218",
    "-15, 70, 0, -15.4302"
  })
  void theBulbIsAsWarmAsThePsychrometricLibrarySays(
      double airTempC, double humidityPct, double elevationM, double bulbC) {
    assertThat(WetBulb.degC(airTempC, humidityPct, elevationM)).isCloseTo(bulbC, within(0.002));
  }

  @ParameterizedTest
  @CsvSource({"20, 50, 13.8421", "5, 60, 2.1390", "2, 90, 1.3896", "1, 95, 0.7093"})
  void aVentilatedPsychrometerReadsTheSame(double airTempC, double humidityPct, double bulbC) {
    assertThat(WetBulb.degC(airTempC, humidityPct, 0)).isCloseTo(bulbC, within(0.06));
  }

  @Property
  void moistAirWarmsTheBulbAndNeverAboveTheAirOverWater(
      @ForAll @DoubleRange(min = -60, max = 45) double airTempC,
      @ForAll @DoubleRange(min = 0, max = 99) double humidityPct,
      @ForAll @DoubleRange(min = -100, max = 4000) double elevationM) {
    double bulbC = WetBulb.degC(airTempC, humidityPct, elevationM);
    assertThat(WetBulb.degC(airTempC, humidityPct + 1, elevationM)).isGreaterThan(bulbC - 2e-4);
    if (bulbC > 0) {
      assertThat(bulbC).isLessThan(airTempC);
    }
  }
}
