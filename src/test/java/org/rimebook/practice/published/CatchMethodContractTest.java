package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.practice.published.Depths.NONE;

import java.time.Duration;
import java.util.BitSet;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every method owes, whatever its way. */
class CatchMethodContractTest {

  private static Stream<CatchMethod> methods() {
    BitSet wet = new BitSet();
    wet.set(1);
    return Stream.of(
        new NeutralAggregatingFilter(),
        new ThreeWirePairwise(),
        new HighWaterMark(),
        new GaussianThreshold(),
        new Oracle(wet, Duration.ofMinutes(5)));
  }

  /** Three wires; 4 mm fall in the middle of the second of three hours. */
  private static WireLevels storm(double offsetMm) {
    Random random = new Random(3);
    double[][] depth = new double[3][181];
    for (int minute = 0; minute <= 180; minute++) {
      double level = 400 + offsetMm + Math.min(Math.max(minute - 80, 0), 20) * 0.2;
      for (int wire = 0; wire < 3; wire++) {
        boolean absent = random.nextInt(10) == 0;
        depth[wire][minute] = absent ? NONE : level + 4 * wire + 0.01 * random.nextGaussian();
      }
    }
    return Depths.every(1, depth);
  }

  @ParameterizedTest
  @MethodSource("methods")
  void aStormIsCaughtInItsHour(CatchMethod method) {
    double[] hourly = method.hourlyCatchMm(storm(0), Depths.hours(3));
    // The pairwise comparison may hold back 0.3 mm and the mark 0.2 mm.
    assertThat(hourly[1]).isCloseTo(4, within(0.3));
    assertThat(hourly[0] + hourly[2]).isCloseTo(0, within(0.05));
  }

  @ParameterizedTest
  @MethodSource("methods")
  void aConstantLoadChangesNothing(CatchMethod method) {
    assertThat(method.hourlyCatchMm(storm(128), Depths.hours(3)))
        .containsExactly(method.hourlyCatchMm(storm(0), Depths.hours(3)), within(1e-5));
  }

  @ParameterizedTest
  @MethodSource("methods")
  void readingsOutsideTheHoursCountForNone(CatchMethod method) {
    HourGrid later = new HourGrid(Depths.minute(120), 2);
    assertThat(method.hourlyCatchMm(storm(0), later)).containsExactly(new double[2], within(0.05));
  }

  @ParameterizedTest
  @MethodSource("methods")
  void nothingIsCaughtWithoutReadings(CatchMethod method) {
    WireLevels none = Depths.every(1, new double[0], new double[0], new double[0]);
    WireLevels missing = Depths.every(1, new double[] {NONE, NONE}, new double[] {NONE, NONE});
    WireLevels one = Depths.every(1, new double[] {400}, new double[] {300});
    assertThat(method.hourlyCatchMm(none, Depths.hours(2))).containsExactly(0, 0);
    assertThat(method.hourlyCatchMm(missing, Depths.hours(2))).containsExactly(0, 0);
    assertThat(method.hourlyCatchMm(one, Depths.hours(2))).containsExactly(0, 0);
  }

  @Test
  void theirNamesTellThemApart() {
    assertThat(methods().map(CatchMethod::name)).doesNotHaveDuplicates().doesNotContain("");
  }
}
