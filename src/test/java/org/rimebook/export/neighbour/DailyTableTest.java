package org.rimebook.export.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.InputException;
import org.rimebook.totals.Quality;
import org.rimebook.totals.neighbour.DayCatch;

class DailyTableTest {

  private static final String FIRST = "2025-01-10T00:00:00-07:00";
  private static final String SECOND = "2025-01-11T00:00:00-07:00";
  private static final String THIRD = "2025-01-12T00:00:00-07:00";
  private static final String HEADER = "start,end,catch_mm,quality\n";
  private static final String ROWS =
      FIRST + "," + SECOND + ",1.5,good\n" + SECOND + "," + THIRD + ",,missing\n";

  @TempDir private Path folder;

  private List<DayCatch> read(String text, Charset charset) throws IOException, InputException {
    Path file = folder.resolve("daily.csv");
    Files.write(file, text.getBytes(charset));
    return DailyTable.read(file);
  }

  private List<DayCatch> read(String text) throws IOException, InputException {
    return read(text, StandardCharsets.UTF_8);
  }

  private String refusal(String text, Charset charset) {
    InputException refused = catchThrowableOfType(InputException.class, () -> read(text, charset));
    assertThat(refused).as("refused").isNotNull();
    assertThat(refused.getMessage()).contains("daily.csv");
    return refused.getMessage();
  }

  private String refusal(String text) {
    return refusal(text, StandardCharsets.UTF_8);
  }

  @Test
  void columnsMayStandInAnyOrderAmongOthers() throws IOException, InputException {
    List<DayCatch> days =
        read("note, catch_mm ,end,start\n\"a, b\",1.5," + SECOND + "," + FIRST + "\n");
    assertThat(days).hasSize(1);
    assertThat(days.get(0).catchMm()).hasValue(1.5);
    assertThat(days.get(0).quality()).isEqualTo(Quality.UNCHECKED);
    assertThat(days.get(0).span().from()).isEqualTo("2025-01-10T07:00:00Z");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void lineEndsAndAMarkAtTheStartDontMatter(String end) throws IOException, InputException {
    List<DayCatch> plain = read(HEADER + ROWS);
    assertThat(plain).hasSize(2);
    assertThat(read("\uFEFF" + (HEADER + ROWS).replace("\n", end))).isEqualTo(plain);
    assertThat(read((HEADER + ROWS).strip())).isEqualTo(plain);
  }

  @Test
  void otherOffsetsNameTheSameInstant() throws IOException, InputException {
    String elsewhere = "2025-01-10T12:30:00+05:30," + "2025-01-11T07:00:00Z,1.5,good\n";
    assertThat(read(HEADER + elsewhere).get(0)).isEqualTo(read(HEADER + ROWS).get(0));
  }

  @Test
  void rowsMayStandInAnyOrder() throws IOException, InputException {
    String turned = SECOND + "," + THIRD + ",,missing\n" + FIRST + "," + SECOND + ",1.5,good\n";
    assertThat(read(HEADER + turned)).isEqualTo(read(HEADER + ROWS));
  }

  @Test
  void whatAccumulatedCountsFromWhereItBegan() throws IOException, InputException {
    String header = "start,end,catch_mm,accumulated_since\n";
    List<DayCatch> days =
        read(header + FIRST + "," + SECOND + ",,\n" + SECOND + "," + THIRD + ",9," + FIRST + "\n");
    assertThat(days.get(1).span().from()).isEqualTo("2025-01-10T07:00:00Z");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2025-01-10,2025-01-11T00:00:00Z,1,good|field 1, start, '2025-01-10' isn't a time with an"
            + " offset",
        "2025-01-10T00:00:00,2025-01-11T00:00:00Z,1,good|isn't a time with an offset",
        ",2025-01-11T00:00:00Z,1,good|field 1, start, is empty",
        "2025-01-11T00:00:00Z,2025-01-10T00:00:00Z,1,good|field 2, end, isn't after the start",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,-0.1,good|'-0.1' isn't a catch in mm",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,NaN,good|'NaN' isn't a catch in mm",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,1e99,good|'1e99' isn't a catch in mm",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,-9999,good|leave it empty when missing",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,1,fine|'fine' isn't a quality. Use good,",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,\"1,5\",good|'1,5' isn't a catch in mm",
        "2025-01-10T00:00:00Z,2025-01-11T0|has 2 fields, the header names 4",
        "2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,1,good,x|has 5 fields, the header names 4",
      })
  void aFieldThatCantBeReadIsNamedWithItsLineAndWhatToDo(String row, String words) {
    String early = "2025-01-09T00:00:00Z,2025-01-10T00:00:00Z,0,good\n";
    assertThat(refusal(HEADER + early + row + "\n")).contains("line 3", words);
  }

  @Test
  void aTableOfOtherColumnsOrDelimitersIsRefusedInWords() {
    assertThat(refusal("date,rain\n2025-01-10,3\n"))
        .contains("line 1", "no column \"start\"; there are date, rain");
    assertThat(refusal(HEADER.replace(',', ';') + ROWS.replace(',', ';')))
        .contains("Save it with commas between the fields");
    assertThat(refusal("start,end,catch_mm,end\n")).contains("\"end\" stands there 2 times");
    assertThat(refusal(HEADER)).contains("has no row");
    assertThat(refusal("")).contains("has no row");
  }

  @Test
  void twoRowsOfOneDayAreRefused() {
    assertThat(refusal(HEADER + ROWS + FIRST + "," + SECOND + ",1.5,good\n"))
        .containsPattern("line [24]: its day overlaps that of line [24]");
  }

  @Test
  void textThatIsNotUtf8IsRefused() {
    assertThat(refusal("note," + HEADER + "å," + ROWS, StandardCharsets.ISO_8859_1))
        .contains("isn't UTF-8 text");
    assertThat(refusal(HEADER + ROWS, StandardCharsets.UTF_16)).contains("isn't UTF-8 text");
    assertThat(refusal(HEADER + ROWS, StandardCharsets.UTF_16LE)).contains("isn't UTF-8 text");
  }

  @Test
  void manyFaultsAreToldTenAtATime() {
    assertThat(refusal(HEADER + "x,y,z,good\n".repeat(500)).lines()).hasSize(10);
  }

  @Test
  void anUnclosedQuoteIsNotFallenOver() {
    assertThat(refusal(HEADER + "\"" + ROWS)).isNotEmpty();
  }
}
