package org.rimebook.desk.model.against;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class CloudProperties {

  private static final Grid GRID = new Grid(new Range(-100, 100), new Range(-50, 50), 37, 23);

  private record Given(List<Double> x, List<Double> y) implements Points {
    @Override
    public double x(int row) {
      return x.get(row);
    }

    @Override
    public double y(int row) {
      return y.get(row);
    }

    @Override
    public boolean used(int row) {
      return row % 3 != 0;
    }

    @Override
    public double departureMm(int row) {
      return y.get(row);
    }
  }

  @Property(tries = 200)
  void everyPointIsInACellAndUsedOnesAreApartFromThoseLeftOut(
      @ForAll @Size(60) List<@DoubleRange(min = -300, max = 300) Double> x,
      @ForAll @Size(60) List<@DoubleRange(min = -300, max = 300) Double> y) {
    Given points = new Given(x, y);

    Cloud.Parted parted = Cloud.parted(points, new RowSpan(0, 60), GRID);

    assertThat(sum(parted.used())).isEqualTo(40);
    assertThat(sum(parted.leftOut())).isEqualTo(20);
  }

  @Property(tries = 200)
  void anOutlierKeepsItsCellWhateverElseThereIs(
      @ForAll @IntRange(min = 0, max = 999) int outlier,
      @ForAll @DoubleRange(min = 40, max = 300) double away) {
    Double[] x = new Double[1000];
    Double[] y = new Double[1000];
    Arrays.fill(x, 0.0);
    Arrays.fill(y, 0.0);
    y[outlier] = away;
    Points points = new Given(List.of(x), List.of(y));

    Cloud cloud = Cloud.of(points, List.of(new RowSpan(0, 1000)), GRID);

    assertThat(cloud.size()).isEqualTo(2);
    assertThat(cloud.row(1)).isEqualTo(outlier);
    assertThat(cloud.line(1)).isEqualTo(GRID.rowOf(away));
    assertThat(cloud.outside(1)).isEqualTo(away > 50);
  }

  private static int sum(Cloud cloud) {
    int sum = 0;
    for (int i = 0; i < cloud.size(); i++) {
      sum += cloud.count(i);
    }
    return sum;
  }
}
