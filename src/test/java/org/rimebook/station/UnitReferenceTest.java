package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Units against their exact definitions: NIST Special Publication 811 (2008), appendix B (degree
 * Fahrenheit, kelvin, mile of 1609.344 m, nautical mile of 1852 m). The tolerance is a few rounding
 * errors of a double.
 */
class UnitReferenceTest {

  @ParameterizedTest
  @CsvSource({
    "degC, -12.5, -12.5, degC",
    "degF, -40, -40, degC",
    "degF, 32, 0, degC",
    "degF, 212, 100, degC",
    "K, 0, -273.15, degC",
    "K, 273.15, 0, degC",
    "m/s, 7.2, 7.2, m/s",
    "km/h, 36, 10, m/s",
    "kn, 3600, 1852, m/s",
    "mph, 3600, 1609.344, m/s",
    "V, 12.6, 12.6, V",
    "mV, 12600, 12.6, V",
    "%, 85, 85, %",
    "m, 1.25, 1.25, m",
    "cm, 125, 1.25, m"
  })
  void aLoggedValueHasItsExactValueInside(
      String symbol, double logged, double inside, String insideSymbol) {
    Unit unit = Unit.ofSymbol(symbol).orElseThrow();
    assertThat(unit.toInside(logged)).isCloseTo(inside, within(1e-12 * (1 + Math.abs(inside))));
    assertThat(unit.insideSymbol()).isEqualTo(insideSymbol);
  }

  @ParameterizedTest
  @EnumSource
  void whatIsMissingStaysMissing(Unit unit) {
    assertThat(unit.toInside(Double.NaN)).isNaN();
    assertThat(Unit.ofSymbol(unit.symbol())).contains(unit);
  }

  @Test
  void aSymbolIsTakenToTheLetter() {
    assertThat(Unit.ofSymbol("DEGC")).isEmpty();
    assertThat(Unit.ofSymbol("")).isEmpty();
  }
}
