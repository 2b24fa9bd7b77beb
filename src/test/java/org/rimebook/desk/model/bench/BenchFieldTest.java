package org.rimebook.desk.model.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BenchFieldTest {

  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-7);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "STRENGTH | 60,5",
        "STRENGTH | 100",
        "COLDEST | −25",
        "WATER_DEG_C | 0",
        "DAYS | 120",
        "ANTIFREEZE | ''",
        "ANTIFREEZE | 0",
        "SHEET_B | 8.2e-6",
        "LEVEL_AFTER | -0,4",
        "VALID_FROM | ''",
        "FROM | 2024-10-01 12:00"
      })
  void whatCanBeMeantIsTaken(BenchField field, String text) {
    assertThat(field.fault(text, OFFSET)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "STRENGTH | 0",
        "STRENGTH | 101",
        "STRENGTH | sixty",
        "STRENGTH | ''",
        "WATER_DEG_C | 41",
        "WATER_DEG_C | -1",
        "DAYS | 1.5",
        "DAYS | 0",
        "ANTIFREEZE | -1",
        "ANTIFREEZE | 1,2,3",
        "OIL | NaN",
        "OIL | 1e999",
        "F0 | 0",
        "SHEET_A | ''",
        "WET_RATE | season's own",
        "FROM | ''",
        "ARRIVED | yesterday"
      })
  void whatCantBeMeantIsSaidWithWhatToDo(BenchField field, String text) {
    assertThat(field.fault(text, OFFSET)).get().asString().isNotBlank();
  }

  @ParameterizedTest
  @EnumSource(BenchField.class)
  void whatStandsInAFieldAtFirstIsNeverWrongUnlessItIsBlank(BenchField field) {
    if (!field.first().isEmpty()) {
      assertThat(field.fault(field.first(), OFFSET)).isEmpty();
    }
  }

  @Test
  void labelsCarryUnitsAndTimesTheOffset() {
    assertThat(BenchField.ANTIFREEZE.label(OFFSET)).isEqualTo("Antifreeze (L)");
    assertThat(BenchField.ARRIVED.label(OFFSET)).isEqualTo("Arrived (UTC-07:00)");
    assertThat(BenchField.ARRIVED.label(ZoneOffset.UTC)).isEqualTo("Arrived (UTC)");
  }
}
