package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.InputException;

/** What can't be read is refused in words that say what to do. */
class RefusalTest {

  private static final String ROW = "2024-11-30 00:00,1500,1600,-3\n";

  @TempDir Path folder;

  private static AbstractThrowableAssert<?, ?> refusal(Season season) {
    return assertThatThrownBy(season::read).isInstanceOf(InputException.class);
  }

  @Test
  void anAbsentWireColumnIsNamedWithTheNearest() throws Exception {
    refusal(Season.of(folder, "note\ntime,f_1_hz,f2_hz,air_temp_c\n" + ROW))
        .hasMessage(
            "records/a.csv, line 2: no column \"f1_hz\"; the nearest are \"f_1_hz\", \"f2_hz\","
                + " \"time\". Correct the name in station.json, or the file's header");
  }

  @Test
  void everyAbsentColumnIsNamedAtOnce() throws Exception {
    refusal(Season.of(folder, "stamp,f1,f2_hz,temp\n" + ROW))
        .hasMessageContaining("no column \"time\"")
        .hasMessageContaining("no column \"f1_hz\"; the nearest are \"f2_hz\", \"f1\"")
        .hasMessageContaining("no column \"air_temp_c\"; the nearest are \"temp\"");
  }

  @Test
  void aHeaderWithNoneOfTheNamesIsStillFound() throws Exception {
    refusal(Season.of(folder, "stamp;wire one;wire two;temp\n" + ROW.replace(",", ";")))
        .hasMessageContaining("records/a.csv, line 1: no column \"time\"")
        .hasMessageContaining("\"stamp\"");
  }

  @Test
  void aTimeColumnAbsentFromOneFileIsRefused() throws Exception {
    refusal(
            Season.of(folder, Season.HEADER + ROW)
                .file("b.csv", Season.HEADER.replace("time", "Zeit") + ROW))
        .hasMessageContaining("records/b.csv, line 1: no column \"time\"");
  }

  @Test
  void aNameGivenTwiceIsRefused() throws Exception {
    refusal(Season.of(folder, "time,f1_hz,f2_hz,f1_hz,air_temp_c\n2024-11-30 00:00,1,2,3,4\n"))
        .hasMessageContaining("\"f1_hz\" stands there more than once (fields 2, 4)");
  }

  @Test
  void aColumnTwoNamesFindIsRefused() throws Exception {
    Season season = Season.of(folder, "time,F1_HZ,f2_hz,AIR_TEMP_C\n" + ROW);
    refusal(season.temperatureColumn("f1_Hz"))
        .hasMessageStartingWith(
            "records/a.csv, line 1: field 2 is both \"f1_hz\" and \"f1_Hz\" of station.json");
  }

  @Test
  void rowsWithMoreFieldsThanNamesAreRefused() throws Exception {
    refusal(Season.of(folder, Season.HEADER + ROW.replace("\n", ",5\n").repeat(3)))
        .hasMessageContaining("the header names 4 columns and the rows have 5 fields");
  }

  @Test
  void noFileIsSaidWithWhatIsThere() throws Exception {
    Season season = Season.in(folder).file("table.dat", "x").file(".hidden.csv", "x");
    refusal(season)
        .hasMessageStartingWith(
            "station.json: no file matches record.files records/*.csv; records holds .hidden.csv,"
                + " table.dat");
  }

  @Test
  void aRecordWithoutRowsIsSaidWithWhatIsThere() throws Exception {
    refusal(Season.of(folder, Season.HEADER + "soon,1,2,3\n\n").file("b.csv", ""))
        .hasMessageContaining("records/a.csv: no row of it can be read: 1 × blank, 1 × header,")
        .hasMessageContaining("1 × time can't be read")
        .hasMessageContaining("records/b.csv: no row of it can be read: it is empty");
  }

  @Test
  void aFileWithoutAnyHeaderIsRefused() throws Exception {
    refusal(Season.of(folder, ROW.repeat(3)))
        .hasMessageContaining("no line of it names the column \"time\"");
  }
}
