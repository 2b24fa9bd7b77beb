package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTest {

  private static final String H = Season.HEADER;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"2000-01-01", "1970-01-01", "1980-01-06", "1990-01-01", "2033-05-05"})
  void aClockResetInMidFileCostsOnlyItsRows(String day) throws Exception {
    String text =
        H
            + Season.tenMinutes("2025-01-10", 0, 60)
            + Season.tenMinutes(day, 0, 12)
            + Season.tenMinutes("2025-01-10", 12, 60);
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(120);
    SetAside run = record.provenance().files().get(0).setAside().get(1);
    assertThat(run.reason()).isEqualTo(LineReason.BAD_CLOCK);
    assertThat(List.of(run.firstLine(), run.lastLine())).containsExactly(62L, 73L);
    assertThat(run.detail()).startsWith("clock at " + day + "T00:00-07:00").contains("days");
  }

  @Test
  void aResetClockIsNotBelievedBecauseItRanLonger() throws Exception {
    String text =
        H + Season.tenMinutes("2025-01-10", 0, 60) + Season.tenMinutes("2000-01-01", 0, 600);
    assertThat(Season.rows(Season.of(folder, text).read()).get(0)).startsWith("2025-01-10");
  }

  @Test
  void aRowWithAGarbledMonthIsSetAside() throws Exception {
    String text =
        H
            + Season.tenMinutes("2025-01-10", 0, 60)
            + "2025-07-10 10:00,1560,1600,-3\n"
            + Season.tenMinutes("2025-01-10", 10, 60).split("\n", 2)[1];
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(119);
    assertThat(Season.setAside(record)).contains("records/a.csv 62-62 BAD_CLOCK");
  }

  @Test
  void aClockSetBackToTheStartOfTheYearAndRightAgainCostsOnlyItsRows() throws Exception {
    String text =
        H
            + Season.tenMinutes("2025-03-10", 0, 60)
            + Season.tenMinutes("2025-01-01", 0, 30)
            + Season.tenMinutes("2025-03-10", 15, 60);
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(120);
    assertThat(Season.setAside(record)).contains("records/a.csv 62-91 BAD_CLOCK");
  }

  @Test
  void anOutageOfManyMonthsIsNoFaultOfTheClock() throws Exception {
    String text =
        H + Season.tenMinutes("2024-02-01", 0, 600) + Season.tenMinutes("2024-11-30", 0, 6);
    assertThat(Season.of(folder, text).read().size()).isEqualTo(606);
  }

  @Test
  void blocksInTheWrongPlaceAreNoFaultOfTheClock() throws Exception {
    String text =
        H
            + Season.tenMinutes("2025-03-10", 0, 60)
            + Season.tenMinutes("2024-11-10", 0, 60)
            + Season.tenMinutes("2025-03-10", 10, 60);
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(180);
    assertThat(Season.setAside(record)).containsExactly("records/a.csv 1-1 HEADER");
  }

  @Test
  void monthsOutOfOrderInOneFileAreNoFaultOfTheClock() throws Exception {
    String text =
        H
            + Season.tenMinutes("2024-12-01", 0, 144)
            + Season.tenMinutes("2025-04-01", 0, 144)
            + Season.tenMinutes("2025-02-01", 0, 144)
            + Season.tenMinutes("2024-10-01", 0, 144);
    assertThat(Season.of(folder, text).read().size()).isEqualTo(576);
  }

  @Test
  void aRecordWhollyAfterAResetIsKept() throws Exception {
    assertThat(Season.of(folder, H + Season.tenMinutes("2000-01-01", 0, 6)).read().size())
        .isEqualTo(6);
  }
}
