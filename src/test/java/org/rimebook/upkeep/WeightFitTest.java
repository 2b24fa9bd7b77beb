package org.rimebook.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimebook.depth.CalibrationCurve;

class WeightFitTest {

  private static final double AREA_CM2 = 200;

  /** An ideal taut string: a = 2 f0 b. */
  private static final CalibrationCurve WIRE = new CalibrationCurve(0.17, 0.17 / 2100, 1050);

  private static List<LoadReading> weighed(CalibrationCurve wire, double noiseHz, long seed) {
    Random random = new Random(seed);
    List<LoadReading> loads = new ArrayList<>();
    for (int repeat = 0; repeat < 2; repeat++) {
      for (double kg = 0; kg <= 12; kg += 1.5) {
        double hz = wire.frequencyHz(Water.depthMm(kg, AREA_CM2));
        loads.add(new LoadReading(kg, hz + noiseHz * random.nextGaussian()));
      }
    }
    return loads;
  }

  @Test
  void exactWeightsGiveTheWireBack() {
    WeightFit fit = WeightFit.of(weighed(WIRE, 0, 1), AREA_CM2);
    assertThat(fit.aCmPerHz()).isCloseTo(0.017, within(1e-9));
    assertThat(fit.bCmPerHz2()).isCloseTo(0.017 / 2100, within(1e-13));
    assertThat(fit.fit().curve().f0Hz()).isCloseTo(1050, within(1e-9));
    assertThat(fit.fit().curve().stringRatio()).isCloseTo(1, within(1e-6));
    assertThat(fit.residuals()).allMatch(r -> Math.abs(r.residualMm()) < 1e-6);
  }

  /** Of 200 about 94 % are within 2 u (t with 16 degrees of freedom); the bounds are 4 sd off. */
  @Test
  void theUncertaintyOfACoversItsError() {
    int within2u = 0;
    for (int seed = 0; seed < 200; seed++) {
      WeightFit fit = WeightFit.of(weighed(WIRE, 0.2, seed), AREA_CM2, 1050, 0);
      within2u += Math.abs(fit.fit().curve().aMmPerHz() - 0.17) < 2 * fit.fit().uAMmPerHz() ? 1 : 0;
    }
    assertThat(within2u).isBetween(178, 199);
  }

  @Test
  void aLitreOfWarmWaterWeighsLessThanAKilogram() {
    assertThat(LoadReading.ofWater(2, 20, 1300).massKg()).isCloseTo(1.9964135, within(1e-7));
  }

  @Test
  void withoutTheEmptyBucketF0HasToBeGiven() {
    List<LoadReading> loads = List.of(new LoadReading(1, 1200), new LoadReading(2, 1340));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WeightFit.of(loads, AREA_CM2))
        .withMessageContaining("empty bucket");
  }

  @Test
  void aSheetThatIsRightIsSeldomContradicted() {
    int contradicted = 0;
    for (int seed = 0; seed < 200; seed++) {
      WeightFit fit = WeightFit.of(weighed(WIRE, 0.2, seed), AREA_CM2, 1050, 0);
      contradicted += SheetTest.of(WIRE, fit).p() < 0.01 ? 1 : 0;
    }
    assertThat(contradicted).isLessThanOrEqualTo(7);
  }

  @Test
  void aSheetThreePercentOffIsToldWithNumbers() {
    CalibrationCurve wrong = new CalibrationCurve(1.03 * 0.17, 0.17 / 2100, 1050);
    SheetTest test = SheetTest.of(wrong, WeightFit.of(weighed(WIRE, 0.2, 3), AREA_CM2));
    assertThat(test.needsNewSheet()).isTrue();
    assertThat(test.worstPct()).isBetween(1.5, 3.2);
    assertThat(test.words()).startsWith("The wire needs a new sheet").contains("p = 0.000");
  }

  @Test
  void aSheetATenthOfAPercentOffDoesNotMatter() {
    CalibrationCurve near = new CalibrationCurve(1.001 * 0.17, 0.17 / 2100, 1050);
    SheetTest test = SheetTest.of(near, WeightFit.of(weighed(WIRE, 0.001, 3), AREA_CM2));
    assertThat(test.p()).isLessThan(0.01);
    assertThat(test.needsNewSheet()).isFalse();
    assertThat(test.words()).contains("too little to matter");
  }

  @Test
  void aZeroThatMovedAloneAsksForNoNewSheet() {
    CalibrationCurve moved = new CalibrationCurve(0.17, 0.17 / 2100, 1052);
    SheetTest test = SheetTest.of(WIRE, WeightFit.of(weighed(moved, 0.2, 3), AREA_CM2));
    assertThat(test.needsNewSheet()).isFalse();
    assertThat(test.zeroMovedHz()).isCloseTo(2, within(0.5));
  }

  /** With 2 and n degrees of freedom F is exceeded with (1 + 2F/n)^(-n/2), by integration. */
  @Test
  void theProbabilityIsThatOfTheFDistribution() {
    for (int seed = 0; seed < 20; seed++) {
      SheetTest test = SheetTest.of(WIRE, WeightFit.of(weighed(WIRE, 0.2, seed), AREA_CM2));
      double n = test.freedom();
      assertThat(test.p()).isCloseTo(Math.pow(1 + 2 * test.fRatio() / n, -n / 2), within(1e-9));
    }
  }

  @Test
  void aMassInTheFieldHoldsOrDoesNot() {
    LoadReading before = new LoadReading(0, 1050);
    double hz = WIRE.frequencyHz(Water.depthMm(2, AREA_CM2));
    FieldCheck good = FieldCheck.of(WIRE, before, new LoadReading(2, hz), AREA_CM2);
    FieldCheck touched = FieldCheck.of(WIRE, before, new LoadReading(2, hz - 15), AREA_CM2);
    assertThat(good.holds()).isTrue();
    assertThat(good.words()).contains("100.00 mm", "it holds");
    assertThat(touched.holds()).isFalse();
    assertThat(touched.words()).contains("look for a touch");
  }
}
