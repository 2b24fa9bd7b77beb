package org.rimebook.export.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.rimebook.station.Interval;

class CurveProperties {

  @Property(tries = 300)
  void thinningKeepsEndsHighsAndLowsInOrder(
      @ForAll @Size(min = 1, max = 400) List<@DoubleRange(min = -50, max = 50) Double> values,
      @ForAll @IntRange(min = 1, max = 60) int columns) {
    Curve curve = new Curve(new Interval(0, values.size()), columns);
    for (int i = 0; i < values.size(); i++) {
      curve.add(i, values.get(i));
    }
    double[][] points = curve.points();
    assertThat(points[0]).isSorted();
    assertThat(points[0].length).isLessThanOrEqualTo(4 * (columns + 1));
    assertThat(points[1][0]).isEqualTo(values.get(0));
    assertThat(points[1][points[1].length - 1]).isEqualTo(values.get(values.size() - 1));
    assertThat(Arrays.stream(points[1]).max().orElseThrow())
        .isEqualTo(values.stream().mapToDouble(v -> v).max().orElseThrow());
    assertThat(Arrays.stream(points[1]).min().orElseThrow())
        .isEqualTo(values.stream().mapToDouble(v -> v).min().orElseThrow());
  }

  @Property(tries = 50)
  void aBreakStaysABreak(@ForAll @IntRange(min = 1, max = 60) int columns) {
    Curve curve = new Curve(new Interval(0, 100), columns);
    for (int i = 0; i < 100; i++) {
      if (i == 50) {
        curve.interrupt();
      }
      curve.add(i, 1);
    }
    assertThat(Arrays.stream(curve.points()[1]).filter(Double::isNaN).count()).isEqualTo(1);
  }
}
