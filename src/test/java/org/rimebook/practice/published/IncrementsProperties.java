package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class IncrementsProperties {

  private static final double THRESHOLD_MM = 0.1;
  private static final double NANOMETRE_MM = 1e-6;

  private static double[] array(List<Double> levels) {
    return levels.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double net(double[] levelMm) {
    return levelMm[levelMm.length - 1] - levelMm[0];
  }

  @Property
  void everyIncrementIsNothingOrReachesTheThreshold(
      @ForAll @Size(min = 1, max = 200) List<@DoubleRange(min = -1, max = 1) Double> levels) {
    double[] levelMm = array(levels);
    double[] settled = Increments.ofLevels(levelMm).settle(THRESHOLD_MM).incrementMm();
    assertThat(Arrays.stream(settled)).allMatch(mm -> mm == 0 || mm >= THRESHOLD_MM);
  }

  @Property
  void theNetIsKeptWithWhatIsLeftOver(
      @ForAll @Size(min = 1, max = 200) List<@DoubleRange(min = -1, max = 1) Double> levels) {
    double[] levelMm = array(levels);
    Increments.Settled settled = Increments.ofLevels(levelMm).settle(THRESHOLD_MM);
    assertThat(Arrays.stream(settled.incrementMm()).sum() + settled.residualMm())
        .isCloseTo(net(levelMm), within(2 * NANOMETRE_MM));
  }

  @Property
  void nothingIsLeftOverOfANetThatReachesTheThreshold(
      @ForAll @Size(min = 2, max = 200) List<@DoubleRange(min = 0, max = 1) Double> levels) {
    double[] levelMm = array(levels);
    levelMm[levelMm.length - 1] = levelMm[0] + THRESHOLD_MM + 2 * NANOMETRE_MM;
    assertThat(Increments.ofLevels(levelMm).settle(THRESHOLD_MM).residualMm()).isZero();
  }

  @Property
  void aLevelThatEndsNoHigherSettlesToNothing(
      @ForAll @Size(min = 2, max = 200) List<@DoubleRange(min = 0, max = 1) Double> levels) {
    double[] levelMm = array(levels);
    levelMm[0] = 1;
    assertThat(Increments.ofLevels(levelMm).settle(THRESHOLD_MM).incrementMm()).containsOnly(0);
  }

  @Property
  void whatIsSettledStaysAsItIs(
      @ForAll @Size(min = 2, max = 100) List<@DoubleRange(min = 0, max = 1) Double> levels) {
    double[] levelMm = array(levels);
    double[] once = Increments.ofLevels(levelMm).settle(THRESHOLD_MM).incrementMm();
    double[] level = new double[once.length + 1];
    for (int i = 0; i < once.length; i++) {
      level[i + 1] = level[i] + once[i];
    }
    assertThat(Increments.ofLevels(level).settle(THRESHOLD_MM).incrementMm())
        .containsExactly(once, within(NANOMETRE_MM));
  }
}
