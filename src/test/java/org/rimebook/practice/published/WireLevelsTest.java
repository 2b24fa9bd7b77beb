package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class WireLevelsTest {

  @Test
  void stampsMustIncrease() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new WireLevels(new long[] {5, 5}, new double[][] {{1, 2}}))
        .withMessageContaining("row 1");
  }

  @Test
  void everyWireHasOneDepthARow() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new WireLevels(new long[] {5, 6}, new double[][] {{1, 2}, {1}}))
        .withMessageContaining("wire 1 has 1 rows, not 2");
  }

  @Test
  void thereIsAWire() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new WireLevels(new long[0], new double[0][]));
  }

  @Test
  void whatWasHandedInCanBeChangedWithoutHarm() {
    long[] stamps = {5, 6};
    double[][] depth = {{1, 2}};
    WireLevels levels = new WireLevels(stamps, depth);
    stamps[0] = 0;
    depth[0][0] = 0;
    assertThat(levels.stampMs(0)).isEqualTo(5);
    assertThat(levels.depthMm(0, 0)).isEqualTo(1);
  }

  @Test
  void anHourHoldsItsEndAndNotItsStart() {
    HourGrid grid = Depths.hours(2);
    double[] hourly = new double[2];
    grid.add(hourly, Depths.minute(0), 100);
    grid.add(hourly, Depths.minute(0) + 1, 1);
    grid.add(hourly, Depths.minute(60), 2);
    grid.add(hourly, Depths.minute(60) + 1, 4);
    grid.add(hourly, Depths.minute(120), 8);
    grid.add(hourly, Depths.minute(120) + 1, 100);
    assertThat(hourly).containsExactly(3, 12);
  }

  @Test
  void aGridHasNoNegativeLength() {
    assertThatIllegalArgumentException().isThrownBy(() -> Depths.hours(-1));
  }
}
