package org.rimebook.desk.model.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StationTimeTest {

  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-7);
  private static final Instant AT = Instant.parse("2025-01-22T17:30:00Z");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2025-01-22 10:30",
        " 2025-01-22T10:30 ",
        "2025-01-22 10:30:00",
        "2025-01-22 11:30 -06:00",
        "2025-01-22T17:30Z",
        "2025-01-22 10:30−07:00"
      })
  void aTimeIsStationTimeUnlessItHasAnOffset(String text) {
    assertThat(StationTime.read(text, OFFSET)).contains(AT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "noon", "22.1.2025 10:30", "2025-02-30 10:30", "2025-01-22", "10:30"})
  void whatIsNoTimeIsNone(String text) {
    assertThat(StationTime.read(text, OFFSET)).isEmpty();
  }

  @Test
  void aTimeIsWrittenAsItIsTyped() {
    assertThat(StationTime.words(AT, OFFSET)).isEqualTo("2025-01-22 10:30");
  }
}
