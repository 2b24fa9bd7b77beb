package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

/** Variances of the catch to many instants at once against each by itself. */
class CatchSweepProperties {

  private static final double HOUR_MS = 3_600_000;

  /** Rain, an estimate and a late catch; in the silence the bucket may lose what nobody wrote. */
  private static CatchSeries series(double silentFrom, double silence, double lostMm) {
    DoubleUnaryOperator rain = Bucket.rain(4, 9, 1.5, 20, 22, 4);
    return Bucket.every(10, 36)
        .noise(0.05)
        .level(h -> rain.applyAsDouble(h) - (h > silentFrom + silence / 2 ? lostMm : 0))
        .silent(silentFrom, silentFrom + silence)
        .entry(new Entry.Estimate(Bucket.header("e"), Bucket.span(10.3, 12.1), 2, "neighbour"))
        .entry(new Entry.LateCatch(Bucket.header("l"), Bucket.span(20.2, 21.4)))
        .entry(new Entry.DrySpell(Bucket.header("d"), Bucket.span(24, 26)))
        .result()
        .series();
  }

  @Property(tries = 60)
  void aSweepHasTheVarianceToEachInstantToTheLastBit(
      @ForAll @DoubleRange(min = 0, max = 30) double silentFrom,
      @ForAll @DoubleRange(min = 0.1, max = 5) double silence,
      @ForAll boolean loses,
      @ForAll @DoubleRange(min = -2, max = 30) double fromHour,
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0, max = 40) Double> hours) {
    CatchSeries series = series(silentFrom, silence, loses ? 40 : 0);
    long fromMs = Bucket.ms(fromHour);
    long[] toMs =
        hours.stream().mapToLong(after -> fromMs + Math.round(after * HOUR_MS)).sorted().toArray();
    double[] each =
        Arrays.stream(toMs).mapToDouble(end -> series.varianceMm2(fromMs, end)).toArray();

    assertThat(series.variancesMm2(fromMs, toMs)).isEqualTo(each);
  }

  @Example
  void piecesOfEveryWayToReckonAreAmongThem() {
    CatchSeries series = series(28, 2, 40);

    assertThat(IntStream.range(0, series.size()).mapToObj(series::kind))
        .contains(
            CatchSeries.Kind.DRY_STEP,
            CatchSeries.Kind.WET_STEP,
            CatchSeries.Kind.LATE_CATCH,
            CatchSeries.Kind.ESTIMATE,
            CatchSeries.Kind.UNKNOWN);
  }

  @Example
  void instantsOutOfOrderAreRefused() {
    CatchSeries series = series(10, 1, 0);

    assertThatThrownBy(
            () -> series.variancesMm2(Bucket.ms(0), new long[] {Bucket.ms(3), Bucket.ms(2)}))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
