package org.rimebook.desk.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.rimebook.station.Interval;

/** What the pyramid answers is what looking at each reading answers. */
class PyramidProperties {

  private static final long JOIN_MS = 5_000;

  /**
   * Readings a few seconds apart with holes in time and readings without a value, that wander
   * smoothly, with noise about as large, or with much more of it.
   */
  private record Made(long[] times, double[] values) implements Series {

    static Made of(long seed, int size) {
      Random random = new Random(seed);
      long[] times = new long[size];
      double[] values = new double[size];
      long at = 1_000_000;
      boolean silent = false;
      double level = 0;
      double noise = random.nextInt(3) * 50;
      for (int i = 0; i < size; i++) {
        at += 1 + random.nextInt(4_000) + (random.nextInt(40) == 0 ? 200_000 : 0);
        silent = random.nextInt(30) == 0 ? !silent : silent;
        times[i] = at;
        level += random.nextGaussian();
        values[i] = silent ? Double.NaN : Math.rint(level + noise * random.nextGaussian());
      }
      return new Made(times, values);
    }

    @Override
    public int size() {
      return times.length;
    }

    @Override
    public long timeMs(int index) {
      return times[index];
    }

    @Override
    public double value(int index) {
      return values[index];
    }

    @Override
    public boolean joins(int before, int after) {
      return times[after] - times[before] <= JOIN_MS;
    }
  }

  @Property
  void everyColumnHoldsTheFirstLeastGreatestAndLastOfItsReadings(
      @ForAll long seed,
      @ForAll @IntRange(max = 9000) int size,
      @ForAll @IntRange(min = 1, max = 90) int width,
      @ForAll @LongRange(min = 0, max = 40_000_000) long fromMs,
      @ForAll @LongRange(min = 1, max = 70_000_000) long lengthMs) {
    Made series = Made.of(seed, size);
    Interval stretch = new Interval(fromMs, fromMs + lengthMs);
    Columns columns = new Columns(Pyramid.of(series));
    columns.look(stretch, width);
    int before = -1;
    for (int column = 0; column < width; column++) {
      int[] inside = inside(series, stretch, width, column);
      assertThat(columns.holds(column)).isEqualTo(inside.length > 0);
      if (inside.length > 0) {
        assertThat(columns.first(column)).isEqualTo(inside[0]);
        assertThat(columns.last(column)).isEqualTo(inside[inside.length - 1]);
        assertThat(columns.least(column)).isEqualTo(values(series, inside)[0]);
        assertThat(columns.most(column)).isEqualTo(values(series, inside)[inside.length - 1]);
        assertThat(columns.joined(column))
            .isEqualTo(before >= 0 && series.joins(before, inside[0]));
        before = inside[inside.length - 1];
      }
    }
  }

  @Property
  void aColumnLookedAtAgainForgetsWhatItHeld(@ForAll long seed) {
    Made series = Made.of(seed, 500);
    Columns used = new Columns(Pyramid.of(series));
    used.look(new Interval(0, 3_000_000), 80);
    used.look(new Interval(1_200_000, 1_400_000), 50);
    Columns fresh = new Columns(Pyramid.of(series));
    fresh.look(new Interval(1_200_000, 1_400_000), 50);
    for (int column = 0; column < 50; column++) {
      assertThat(used.first(column)).isEqualTo(fresh.first(column));
      assertThat(used.most(column)).isEqualTo(fresh.most(column));
    }
    assertThat(used.endIndex() - used.firstIndex())
        .isEqualTo(fresh.endIndex() - fresh.firstIndex());
  }

  @Property
  void aSeriesLookedAtLikeOneOfTheSameTimesHoldsItsOwn(@ForAll long seed) {
    Made series = Made.of(seed, 500);
    Interval stretch = new Interval(1_100_000, 1_500_000);
    Columns plain = new Columns(Pyramid.of(series));
    plain.look(stretch, 70);
    Columns alike = new Columns(Pyramid.of(new Shifted(series)));
    alike.look(stretch, plain);
    for (int column = 0; column < 70; column++) {
      assertThat(alike.first(column)).isEqualTo(plain.first(column));
      assertThat(alike.most(column)).isEqualTo(plain.most(column) + 1);
    }
  }

  /** The same times with values greater by one. */
  private record Shifted(Made of) implements Series {
    @Override
    public int size() {
      return of.size();
    }

    @Override
    public long timeMs(int index) {
      return of.timeMs(index);
    }

    @Override
    public Object clock() {
      return of;
    }

    @Override
    public double value(int index) {
      return of.value(index) + 1;
    }

    @Override
    public boolean joins(int before, int after) {
      return of.joins(before, after);
    }
  }

  private static int[] inside(Made series, Interval stretch, int width, int column) {
    return IntStream.range(0, series.size())
        .filter(i -> !Double.isNaN(series.value(i)))
        .filter(i -> stretch.contains(series.timeMs(i)))
        .filter(i -> (series.timeMs(i) - stretch.fromMs()) * width / stretch.lengthMs() == column)
        .toArray();
  }

  private static double[] values(Made series, int[] inside) {
    double[] values = Arrays.stream(inside).mapToDouble(series::value).toArray();
    Arrays.sort(values);
    return values;
  }
}
