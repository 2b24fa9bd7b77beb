package org.rimebook.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class AntifreezeReferenceTest {

  private static double freezing(Antifreeze antifreeze, double antifreezeL, double waterL) {
    return antifreeze.freezingDegC(antifreezeL, waterL).value().orElseThrow();
  }

  /** Lange's Handbook of Chemistry, 15th ed., Table 5.13, shares by volume. */
  @ParameterizedTest
  @CsvSource({
    "PROPYLENE_GLYCOL, 5, -1.1",
    "PROPYLENE_GLYCOL, 20, -6.7",
    "PROPYLENE_GLYCOL, 35, -16.1",
    "PROPYLENE_GLYCOL, 50, -33.3",
    "METHANOL, 10, -5.0",
    "METHANOL, 30, -20.0",
    "METHANOL, 40, -30.0"
  })
  void rowsOfTheTableByVolumeComeBack(Antifreeze antifreeze, double percent, double degC) {
    assertThat(freezing(antifreeze, percent, 100 - percent)).isCloseTo(degC, within(1e-9));
  }

  /** The same table, shares by mass; a litre of ethanol weighs 0.789 kg (from memory). */
  @ParameterizedTest
  @CsvSource({"11.3, -5.0", "39.0, -28.7", "71.9, -51.3"})
  void rowsOfTheTableByMassComeBack(double percent, double degC) {
    double ethanolL = percent / 0.789;
    assertThat(freezing(Antifreeze.ETHANOL, ethanolL, 100 - percent)).isCloseTo(degC, within(1e-6));
  }

  /** Specific gravity at 15.6 °C from the same table, water weighing 0.9990 kg/L then. */
  @ParameterizedTest
  @CsvSource({
    "PROPYLENE_GLYCOL, 0.50, 1.040",
    "PROPYLENE_GLYCOL, 0.25, 1.020",
    "METHANOL, 0.40, 0.949",
    "METHANOL, 0.10, 0.986"
  })
  void aThinnedLitreWeighsWhatTheTableSays(Antifreeze antifreeze, double strength, double gravity) {
    assertThat(antifreeze.kgPerL(strength) / 0.99901).isCloseTo(gravity, within(1e-4));
  }

  /** Freezing is lowered by 1.86 °C for each mole in a kilogram of water (dilute solutions). */
  @Test
  void whatIsDiluteFreezesAboutWhereMolesSay() {
    double moles = 0.1 * 791 / 32.04;
    double law = -1.86 * moles / 0.9;
    assertThat(freezing(Antifreeze.METHANOL, 0.1, 0.9)).isCloseTo(law, within(1.0));
  }

  @Test
  void beyondTheTableNothingIsTold() {
    Known strong = Antifreeze.PROPYLENE_GLYCOL.freezingDegC(0.8, 0.2);
    assertThat(strong.value()).isEmpty();
    assertThat(strong.why()).contains("80 %", "ends at 50 %", "-33.3 °C");
    Known cold = Antifreeze.METHANOL.neededL(5, -31);
    assertThat(cold.value()).isEmpty();
    assertThat(cold.why()).contains("ends at -30.0 °C", "-31.0 °C");
    assertThat(Antifreeze.PROPYLENE_GLYCOL.freezingDegC(0, 0).value()).isEmpty();
  }

  @Test
  void onlyWhatCouldBeCheckedHasASource() {
    assertThat(Antifreeze.ETHYLENE_GLYCOL.source()).isEmpty();
    assertThat(Antifreeze.PROPYLENE_GLYCOL.source().orElseThrow()).contains("Lange");
  }

  @ParameterizedTest
  @EnumSource
  void itsWordOnTheCommandLineComesBack(Antifreeze antifreeze) {
    assertThat(Antifreeze.ofCode(antifreeze.code())).contains(antifreeze);
    assertThat(antifreeze.hazard()).isNotBlank();
  }

  /** What is needed for some water is just what keeps that much water from freezing. */
  @Property
  void whatIsNeededKeepsItFromFreezing(
      @ForAll Antifreeze antifreeze,
      @ForAll @DoubleRange(min = 0.1, max = 20) double waterL,
      @ForAll @DoubleRange(min = -29, max = -0.5) double coldDegC) {
    double litres = antifreeze.neededL(waterL, coldDegC).value().orElseThrow();
    assertThat(freezing(antifreeze, litres, waterL)).isCloseTo(coldDegC, within(1e-6));
    assertThat(antifreeze.mostWaterL(litres, coldDegC).value().orElseThrow())
        .isCloseTo(waterL, within(1e-6));
  }

  @Property
  void moreWaterNeverFreezesLater(
      @ForAll Antifreeze antifreeze,
      @ForAll @DoubleRange(min = 1, max = 10) double waterL,
      @ForAll @DoubleRange(min = 0, max = 10) double moreL) {
    double little = freezing(antifreeze, 0.5, waterL);
    assertThat(freezing(antifreeze, 0.5, waterL + moreL)).isGreaterThanOrEqualTo(little - 1e-9);
  }
}
