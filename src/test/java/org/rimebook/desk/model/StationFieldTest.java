package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StationFieldTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LATITUDE|-53,25", "LONGITUDE|−117.1", "UTC_OFFSET|-07:00", "UTC_OFFSET|+5",
        "DAY_START|06:00", "ORIFICE|2e2", "CAPACITY|600", "RIM|.5"
      })
  void whatPeopleWriteIsTaken(StationField field, String text) {
    assertThat(field.fault(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LATITUDE|91",
        "LONGITUDE|W 117",
        "UTC_OFFSET|MST",
        "DAY_START|06:30",
        "DAY_START|6",
        "ORIFICE|0",
        "ORIFICE|NaN",
        "CAPACITY|-1",
        "RIM|2m",
        "ELEVATION|1,490.5",
        "GATE|1e999"
      })
  void whatCannotBeIsRefusedInWords(StationField field, String text) {
    assertThat(field.fault(text)).isPresent();
  }

  @ParameterizedTest
  @EnumSource(StationField.class)
  void itsExampleIsRightAndOnlyWhatIsNeededMayNotBeEmpty(StationField field) {
    assertThat(field.fault(field.example())).isEmpty();
    assertThat(field.fault(" ").isPresent()).isEqualTo(field.required());
  }

  @Test
  void aNumberWithTwoCommasIsNone() {
    assertThat(Numbers.read("1,2,3")).isEmpty();
    assertThat(Numbers.read("8.2e-6")).hasValue(8.2e-6);
  }
}
