package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.InputException;

/** Forms of time stamps. Station time is -07:00 throughout, whatever the season of the year. */
class StampTest {

  @TempDir Path folder;

  private static String file(List<String> stamps) {
    StringBuilder text = new StringBuilder(Season.HEADER.replace(",", ";"));
    stamps.forEach(stamp -> text.append(stamp).append(";1500;1600;-3\n"));
    return text.toString();
  }

  private List<String> read(Season season) throws Exception {
    return Season.rows(season.read()).stream().map(row -> row.split(" ")[0]).toList();
  }

  private List<String> read(String... stamps) throws Exception {
    return read(Season.of(folder, file(List.of(stamps))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2024-11-30T17:10:00 | 2024-12-01T00:10:00Z",
        "2024-11-30 17:10 | 2024-12-01T00:10:00Z",
        "2024-11-30T17:10:05.250 | 2024-12-01T00:10:05.250Z",
        "2024-11-30 17:10:05,25 | 2024-12-01T00:10:05.250Z",
        "2024-11-30T17:10:00Z | 2024-11-30T17:10:00Z",
        "2024-11-30T17:10:00 UTC | 2024-11-30T17:10:00Z",
        "2024-11-30T17:10:00-06:00 | 2024-11-30T23:10:00Z",
        "2024-11-30T17:10:00+0530 | 2024-11-30T11:40:00Z",
        "2024-11-30T17:10+05 | 2024-11-30T12:10:00Z",
        "2024-11-30 24:00 | 2024-12-01T07:00:00Z",
        "2024-12-31T24:00:00 | 2025-01-01T07:00:00Z",
        "2024/11/30 17:10 | 2024-12-01T00:10:00Z",
        "2024.11.30 17:10 | 2024-12-01T00:10:00Z",
        "30/11/2024 17:10 | 2024-12-01T00:10:00Z",
        "30.11.2024 17:10:00 | 2024-12-01T00:10:00Z",
        "30-11-2024 17:10:00 | 2024-12-01T00:10:00Z",
        "11/30/2024 5:10 PM | 2024-12-01T00:10:00Z",
        "11/30/2024 05:10:00 pm | 2024-12-01T00:10:00Z",
        "11/30/2024 12:10 AM | 2024-11-30T07:10:00Z",
        "11/30/2024 12:10 p.m. | 2024-11-30T19:10:00Z",
        "30/11/93 17:10 | 1993-12-01T00:10:00Z",
        "11/30/24 17:10 | 2024-12-01T00:10:00Z",
        "30-Nov-2024 17:10:00 | 2024-12-01T00:10:00Z",
        "30-nov-24 17:10:00 | 2024-12-01T00:10:00Z",
        "2024-Nov-30 17:10:00 | 2024-12-01T00:10:00Z",
        "Nov 30, 2024 5:10 PM | 2024-12-01T00:10:00Z",
        "Sat, 30 Nov 2024 17:10:00 | 2024-12-01T00:10:00Z",
        "30 November 2024 17:10 | 2024-12-01T00:10:00Z",
        "202411301710 | 2024-12-01T00:10:00Z",
        "20241130171005 | 2024-12-01T00:10:05Z",
        "20241130T1710 | 2024-12-01T00:10:00Z",
        "2024113017 | 2024-12-01T00:00:00Z",
        "1733011800 | 2024-12-01T00:10:00Z",
        "1733011800.5 | 2024-12-01T00:10:00.500Z",
        "1733011800,25 | 2024-12-01T00:10:00.250Z",
        "1733011800250 | 2024-12-01T00:10:00.250Z",
        "2024-02-29 17:10 | 2024-03-01T00:10:00Z",
        "2024-11-30 | 2024-11-30T07:00:00Z"
      })
  void commonFormsAreRead(String stamp, String utc) throws Exception {
    assertThat(read(stamp)).containsExactly(utc);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2023-02-29 17:10",
        "2024-11-31 17:10",
        "2024-13-01 17:10",
        "2024-11-30 25:00",
        "2024-11-30 24:10",
        "2024-11-30 17:60",
        "2024-11-30 17:10 XX",
        "0000-00-00 00:00",
        "soon",
        "2024-11-30T17:10:00-99:00",
        "13:10 PM",
        "1850-01-01 00:00",
        ""
      })
  void timesThatDoNotExistAreSetAside(String stamp) throws Exception {
    Season season = Season.of(folder, file(List.of("2024-11-30 17:00", stamp)));
    assertThat(Season.setAside(season.read()))
        .containsExactly("records/a.csv 1-1 HEADER", "records/a.csv 3-3 BAD_TIME");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dd/MM/yyyy HH:mm | 03/04/2024 17:10 | 2024-04-04T00:10:00Z",
        "M/d/yyyy h:mm a | 3/4/2024 5:10 pm | 2024-03-05T00:10:00Z",
        "dd MMM yyyy HH.mm | 03 Apr 2024 17.10 | 2024-04-04T00:10:00Z",
        "yyyy-DDD HH:mm | 2024-094 24:00 | 2024-04-04T07:00:00Z",
        "yyyy-MM-dd'T'HH:mm:ssXXX | 2024-04-03T17:10:00Z | 2024-04-03T17:10:00Z",
        "yyyyMMdd | 20240403 | 2024-04-03T07:00:00Z",
        "epoch-seconds | 1712189400 | 2024-04-04T00:10:00Z",
        "epoch-milliseconds | 1712189400000 | 2024-04-04T00:10:00Z"
      })
  void theSheetsTimeFormatHolds(String format, String stamp, String utc) throws Exception {
    assertThat(read(Season.of(folder, file(List.of(stamp))).timeFormat(format)))
        .containsExactly(utc);
  }

  @ParameterizedTest
  @ValueSource(strings = {"dd/MM HH:mm", "HH:mm", "bogus {", "dd/MM/yyyy hh:mm", ""})
  void aTimeFormatThatHoldsNoWholeTimeIsRefused(String format) throws Exception {
    Season season = Season.of(folder, file(List.of("03/04/2024 17:10"))).timeFormat(format);
    assertThatThrownBy(season::read)
        .isInstanceOf(InputException.class)
        .hasMessageContaining("station.json: record.time_format \"" + format + "\" can't be used")
        .hasMessageContaining("yyyy-MM-dd HH:mm:ss");
  }

  @Test
  void aFieldThatCannotBeAMonthSettlesTheOrderOfAllDates() throws Exception {
    assertThat(read("03/04/2024 17:00", "13/05/2024 17:00"))
        .containsExactly("2024-04-04T00:00:00Z", "2024-05-14T00:00:00Z");
    assertThat(read("03/04/2024 17:00", "05/13/2024 17:00"))
        .containsExactly("2024-03-05T00:00:00Z", "2024-05-14T00:00:00Z");
  }

  @Test
  void aStrayStampOfAnotherShapeLeavesNothingOpen() throws Exception {
    assertThat(read("2024-11-30 00:00:00", "1-10-00", "2024-11-30 00:10:00"))
        .contains("2024-11-30T07:00:00Z", "2024-11-30T07:10:00Z");
  }

  @Test
  void theEvidenceMayStandFarDownTheFile() throws Exception {
    StringBuilder text = new StringBuilder(Season.HEADER);
    for (int minute = 0; minute < 3000; minute++) {
      String stamp =
          String.format("0%d/05/2024 %02d:%02d", 1 + minute / 1440, minute / 60 % 24, minute % 60);
      text.append(stamp).append(",1500,1600,-3\n");
    }
    text.append("25/05/2024 00:00,1500,1600,-3\n");
    List<String> stamps = read(Season.of(folder, text.toString()));
    assertThat(stamps.get(0)).isEqualTo("2024-05-01T07:00:00Z");
  }

  @Test
  void aDaysEndCrossedAtTheSamplingIntervalSettlesTheOrder() throws Exception {
    assertThat(read("03/04/2024 23:30", "03/04/2024 23:40", "03/04/2024 23:50", "04/04/2024 00:00"))
        .contains("2024-04-04T06:30:00Z", "2024-04-04T07:00:00Z");
    assertThat(read("04/03/2024 23:30", "04/03/2024 23:40", "04/03/2024 23:50", "04/04/2024 00:00"))
        .contains("2024-04-04T06:30:00Z", "2024-04-04T07:00:00Z");
    assertThat(read("24/04/03 23:40", "24/04/03 23:50", "24/04/04 00:00").get(0))
        .isEqualTo("2024-04-04T06:40:00Z");
  }

  @Test
  void dailyRowsSettleTheOrderByTheirSteps() throws Exception {
    assertThat(read("03/04/2024", "04/04/2024", "05/04/2024").get(2))
        .isEqualTo("2024-04-05T07:00:00Z");
  }

  @Test
  void aFileThatLeavesTheOrderOpenFollowsTheOthersOfItsShape() throws Exception {
    Season season =
        Season.in(folder)
            .file("a.csv", file(List.of("03/04/2024 17:00", "03/04/2024 17:10")))
            .file("b.csv", file(List.of("13/04/2024 17:00")));
    assertThat(read(season).get(0)).isEqualTo("2024-04-04T00:00:00Z");
  }

  @Test
  void anOpenOrderIsAnErrorThatShowsBothReadingsAndTheirFormats() throws Exception {
    Season season = Season.of(folder, file(List.of("03/04/2024 17:00", "03/04/2024 17:10")));
    assertThatThrownBy(season::read)
        .isInstanceOf(InputException.class)
        .hasMessage(
            "records/a.csv: the time 03/04/2024 17:00 can be 3 April 2024 or 4 March 2024; nothing"
                + " in the record settles it. Add to record in station.json \"time_format\":"
                + " \"d/M/yyyy H:mm\" for 3 April 2024, or \"time_format\": \"M/d/yyyy H:mm\" for"
                + " 4 March 2024");
    assertThat(read(season.timeFormat("d/M/yyyy H:mm")).get(0)).isEqualTo("2024-04-04T00:00:00Z");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "03/04/2024 17:00 | d/M/yyyy H:mm",
        "3.4.2024 7:00:00 | d.M.yyyy H:mm:ss",
        "03/04/24 05:10:20.250 PM | d/M/yy h:mm:ss.SSS a",
        "03-04-2024T17:00:00-07:00 | d-M-yyyy'T'H:mm:ssxxx",
        "03/04/2024 | d/M/yyyy"
      })
  void theFormatAskedForReadsTheStamp(String stamp, String format) throws Exception {
    assertThat(StampPatterns.of(stamp, DateOrder.DAY_MONTH_YEAR)).isEqualTo(format);
    StampReader asked = PatternStamp.of(format, ZoneOffset.ofHours(-7));
    StampReader found = new CivilStamp(DateOrder.DAY_MONTH_YEAR, -7 * 3_600_000L);
    assertThat(asked.epochMs(stamp)).isEqualTo(found.epochMs(stamp));
  }

  @Test
  void daysAgreeWithTheCalendarOfTheJavaLibrary() {
    for (long day = -25_000; day < 80_000; day += 13) {
      LocalDate date = LocalDate.ofEpochDay(day);
      assertThat(CivilTime.epochDay(date.getYear(), date.getMonthValue(), date.getDayOfMonth()))
          .isEqualTo(day);
    }
    assertThat(
            Instant.ofEpochMilli(
                new CivilStamp(DateOrder.YEAR_MONTH_DAY, 0).epochMs("2000-02-29 12:00")))
        .isEqualTo("2000-02-29T12:00:00Z");
  }

  @Test
  void timesOfAnUnknownFormAreAnErrorThatShowsOne() throws Exception {
    List<String> stamps = IntStream.range(0, 20).mapToObj(i -> "day " + i).toList();
    assertThatThrownBy(() -> read(Season.of(folder, file(stamps))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("none of its times can be read; the first is \"day 0\"");
  }
}
