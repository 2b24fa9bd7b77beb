package org.rimebook.desk.model.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.desk.model.bench.Loads.Column;
import org.rimebook.upkeep.LoadReading;

class LoadsTest {

  private final AtomicInteger changes = new AtomicInteger();
  private final Loads loads = new Loads(changes::incrementAndGet);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0\t1050.1\n2\t1521.4\n",
        "0\t1050,1\r\n2\t1521,4",
        "kg;Hz\n0;1050,1\n2;1521,4",
        "0 1050.1\n\n2   1521.4",
        "0,1050.1\n2,1521.4",
        "mass (kg)\tfrequency\textra\n0\t1050.1\tx\n2\t1521.4\t",
      })
  void twoColumnsOfASpreadsheetFillTheRows(String lines) {
    assertThat(loads.paste(lines, 0)).isEqualTo(2);
    assertThat(loads.firstFault()).isEmpty();
    assertThat(loads.readings(OptionalDouble.empty()))
        .containsExactly(new LoadReading(0, 1050.1), new LoadReading(2, 1521.4));
  }

  @Test
  void oneColumnWithDecimalCommasIsntTakenForTwo() {
    loads.paste("1,5\n2,5", 0);
    assertThat(loads.text(0, Column.LOAD)).isEqualTo("1,5");
    assertThat(loads.firstFault()).get().asString().contains("Row 1", "frequency");
  }

  @Test
  void pastingFromALaterRowLeavesThoseBeforeAndAddsRows() {
    loads.type(0, Column.LOAD, "0");
    loads.paste("1\t1300\n".repeat(9), 1);
    assertThat(loads.text(0, Column.LOAD)).isEqualTo("0");
    assertThat(loads.size()).isEqualTo(10);
    assertThat(loads.paste("", 0)).isZero();
  }

  @Test
  void textNegativeMassesAndFrequenciesOfNothingAreNamedWithTheirRow() {
    loads.type(1, Column.LOAD, "two");
    assertThat(loads.firstFault()).get().asString().contains("Row 2", "number");
    loads.type(1, Column.LOAD, "-2");
    assertThat(loads.firstFault()).get().asString().contains("isn't negative");
    loads.type(1, Column.LOAD, "2");
    loads.type(1, Column.FREQUENCY, "0");
    assertThat(loads.firstFault()).get().asString().contains("more than 0 Hz");
    loads.type(1, Column.FREQUENCY, "1521,4");
    assertThat(loads.firstFault()).isEmpty();
  }

  @Test
  void rowsAreAddedAndRemovedAndOneAlwaysStays() {
    int before = loads.size();
    loads.add();
    assertThat(loads.size()).isEqualTo(before + 1);
    loads.type(0, Column.LOAD, "7");
    loads.remove(2, 0);
    assertThat(loads.text(0, Column.LOAD)).isEmpty();
    assertThat(loads.size()).isEqualTo(before - 1);
    loads.remove(0, 1, 2, 3, 4);
    assertThat(loads.size()).isEqualTo(1);
    assertThat(changes.get()).isEqualTo(4);
  }

  @Test
  void litresOfWaterWeighByTheirTemperature() {
    loads.paste("2\t1521.4", 0);
    assertThat(loads.readings(OptionalDouble.of(12)).get(0).massKg()).isBetween(1.9985, 1.9995);
  }
}
