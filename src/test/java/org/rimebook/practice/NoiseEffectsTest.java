package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Arrays;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.Kurtosis;
import org.junit.jupiter.api.Test;
import org.rimebook.practice.ReadingNoise.Memory;
import org.rimebook.practice.ReadingNoise.Size;
import org.rimebook.practice.ReadingNoise.Tails;

class NoiseEffectsTest {

  private static final Size TENTH = new Size(0.1, 0, 2);
  private static final Memory NONE = new Memory(0, 60_000);

  /** Ten days every ten minutes. */
  private static double[] noise(Size size, double common, Memory memory, Tails tails, int wire) {
    return Trial.change(new ReadingNoise(size, common, memory, tails), wire, 200);
  }

  private static double correlationWithTheNext(double[] values) {
    return new PearsonsCorrelation()
        .correlation(
            Arrays.copyOf(values, values.length - 1), Arrays.copyOfRange(values, 1, values.length));
  }

  @Test
  void whiteNoiseHasTheSizeAskedAndForgetsItself() {
    double[] white = noise(TENTH, 0.3, NONE, Tails.NORMAL, 1);
    assertThat(Math.sqrt(StatUtils.variance(white))).isCloseTo(0.1, within(0.006));
    assertThat(correlationWithTheNext(white)).isCloseTo(0, within(0.08));
  }

  @Test
  void noiseWithAMemoryFallsOffByItsTimeConstant() {
    double[] slow = noise(TENTH, 0, new Memory(1, 1_200_000), Tails.NORMAL, 0);
    assertThat(correlationWithTheNext(slow)).isCloseTo(Math.exp(-0.5), within(0.08));
  }

  @Test
  void heavyTailsHaveTheSameVarianceAndRareLargeReadings() {
    double[] heavy = noise(TENTH, 0, NONE, Tails.HEAVY, 0);
    assertThat(Math.sqrt(StatUtils.variance(heavy))).isCloseTo(0.1, within(0.03));
    assertThat(new Kurtosis().evaluate(heavy)).isGreaterThan(3);
    // Half of a t of 3 degrees of freedom, scaled to variance 1, lies within 0.7649 / sqrt 3.
    long inside = Arrays.stream(heavy).filter(v -> Math.abs(v) < 0.1 * 0.4416).count();
    assertThat((double) inside / heavy.length).isCloseTo(0.5, within(0.04));
  }

  @Test
  void theCommonShareIsTheCorrelationBetweenWires() {
    double[] one = noise(TENTH, 0.6, NONE, Tails.NORMAL, 0);
    double[] other = noise(TENTH, 0.6, NONE, Tails.NORMAL, 2);
    assertThat(new PearsonsCorrelation().correlation(one, other)).isCloseTo(0.6, within(0.08));
  }

  @Test
  void windMakesItLargerAndTwiceTheSizeIsTwiceTheNoise() {
    Size windy = new Size(0.02, 0.4, 1.5);
    double[] noise = noise(windy, 0, NONE, Tails.NORMAL, 0);
    double[] doubled = noise(windy.times(2), 0, NONE, Tails.NORMAL, 0);
    Weather weather = Trial.weather();
    double calm = 0;
    double storm = 0;
    for (int i = 0; i < noise.length; i++) {
      assertThat(doubled[i]).isCloseTo(2 * noise[i], within(1e-9));
      if (weather.windMs(i) < 3) {
        calm = Math.max(calm, Math.abs(noise[i]));
      } else if (weather.windMs(i) > 7) {
        storm = Math.max(storm, Math.abs(noise[i]));
      }
    }
    assertThat(storm).isGreaterThan(1.5 * calm);
  }

  @Test
  void aDailyWaveComesBackEveryDayAndMovesTheNorthernWireLeast() {
    double[] north = Trial.change(new DailyWave(0.3), 0, 200);
    double[] east = Trial.change(new DailyWave(0.3), 1, 200);
    int day = 144;
    assertThat(StatUtils.max(north)).isBetween(0.01, 0.1);
    assertThat(StatUtils.max(east)).isBetween(0.1, 0.4);
    double[] today = Arrays.copyOf(east, east.length - day);
    double[] tomorrow = Arrays.copyOfRange(east, day, east.length);
    assertThat(new PearsonsCorrelation().correlation(today, tomorrow)).isGreaterThan(0.8);
    assertThat(StatUtils.mean(east)).isCloseTo(0, within(0.03));
  }

  @Test
  void aWireFollowsTheAirWithItsLag() {
    double[] atOnce = Trial.change(new TemperatureCoefficient(-4e-5, 0, 5, 0), 0, 600);
    double[] late = Trial.change(new TemperatureCoefficient(-4e-5, 0, 5, 3_600_000), 0, 600);
    double kept = StrictMath.exp(-600_000.0 / 3_600_000);
    for (int i = 1; i < late.length; i++) {
      assertThat(late[i]).isCloseTo(kept * late[i - 1] + (1 - kept) * atOnce[i], within(1e-9));
    }
  }

  @Test
  void someReadingsDropOutOnEachWireByItself() {
    double[] one = new double[20_000];
    double[] other = new double[20_000];
    Surroundings around =
        new Surroundings(Trial.sheet(), Trial.weather(Duration.ofSeconds(40), 1), 1);
    new Dropouts(0.02).apply(around, 0, one);
    new Dropouts(0.02).apply(around, 1, other);
    assertThat(Arrays.stream(one).filter(Double::isNaN).count()).isBetween(300L, 500L);
    assertThat(one).isNotEqualTo(other);
  }
}
