package org.rimebook.desk.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.Interval;

class TimeTicksTest {

  private static final ZoneOffset OFFSET = ZoneOffset.ofHoursMinutes(-3, -30);

  private static Interval span(String from, String to) {
    return Interval.of(at(from), at(to));
  }

  private static Instant at(String local) {
    return OffsetDateTime.parse(local + ":00-03:30").toInstant();
  }

  private static List<String> words(List<TimeTicks.Tick> ticks) {
    return ticks.stream().map(TimeTicks.Tick::words).toList();
  }

  @Test
  void hoursOfStationTimeStandOverDays() {
    TimeTicks ticks =
        TimeTicks.of(span("2025-01-14T20:10", "2025-01-15T08:00"), OFFSET, 3 * 3_600_000);
    assertThat(words(ticks.upper())).containsExactly("21:00", "00:00", "03:00", "06:00");
    assertThat(words(ticks.lower())).containsExactly("Tue 14 January 2025", "Wed 15 January 2025");
    assertThat(ticks.lower().get(1).epochMs()).isEqualTo(at("2025-01-15T00:00").toEpochMilli());
  }

  @Test
  void daysStandOverMonthsAndNoTwoAreClose() {
    TimeTicks ticks =
        TimeTicks.of(span("2025-01-20T00:00", "2025-03-05T00:00"), OFFSET, 4 * 86_400_000L);
    assertThat(words(ticks.upper())).containsExactly("21", "26", "1", "6", "11", "16", "21", "1");
    assertThat(words(ticks.lower())).containsExactly("January 2025", "February 2025", "March 2025");
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 12, 15, 18, 20, 24, 30})
  void onlyDaysStandCloserThanHours(int hours) {
    Interval visible = span("2025-01-10T00:00", "2025-01-30T00:00");
    TimeTicks ticks = TimeTicks.reading(visible, OFFSET, hours * 3_600_000L);
    long apartMs = ticks.upper().get(1).epochMs() - ticks.upper().get(0).epochMs();
    long leastMs = hours * 3_600_000L * (ticks.finest() == TimeTicks.Unit.DAYS ? 5 : 8) / 8;
    assertThat(apartMs).isGreaterThanOrEqualTo(leastMs);
  }

  @Test
  void monthsStandOverYears() {
    TimeTicks ticks =
        TimeTicks.of(span("2023-11-01T00:00", "2025-02-01T00:00"), OFFSET, 20 * 86_400_000L);
    assertThat(words(ticks.lower())).containsExactly("2023", "2024", "2025");
    assertThat(words(ticks.upper())).startsWith("Nov", "Dec", "Jan").hasSize(15);
  }

  @ParameterizedTest
  @ValueSource(longs = {60_000, 400_000, 3_600_000, 40_000_000, 100_000_000, 900_000_000})
  void marksAreNeverCloserThanAskedFor(long apartMs) {
    Interval visible = span("2024-10-03T00:00", "2025-04-20T00:00");
    List<TimeTicks.Tick> upper = TimeTicks.of(visible, OFFSET, apartMs).upper();
    for (int i = 1; i < upper.size(); i++) {
      assertThat(upper.get(i).epochMs() - upper.get(i - 1).epochMs())
          .isGreaterThanOrEqualTo(apartMs);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2025-01, 2025-01-01T00:00, 2025-02-01T00:00",
    "2025-01-15, 2025-01-15T00:00, 2025-01-16T00:00",
    "2025-1-5 6, 2025-01-05T06:00, 2025-01-05T07:00",
    "2025-01-15T06:30, 2025-01-15T06:30, 2025-01-15T06:31"
  })
  void aDateNamesAStretchOfStationTime(String words, String from, String to) {
    assertThat(DateWords.read(words, OFFSET)).contains(span(from, to));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "15 January", "2025-02-30", "2025-13-01", "2025-01-15 25:00"})
  void whatIsNoDateNamesNothing(String words) {
    assertThat(DateWords.read(words, OFFSET)).isEmpty();
  }
}
