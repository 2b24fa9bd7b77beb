package org.rimebook.record;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.Unit;

/** The same three rows, however a file writes them. */
class DialectTest {

  private static final List<String> ROWS =
      List.of(
          "2024-11-30T07:00:00Z 1500.25 1600.5 -3.5",
          "2024-11-30T07:10:00Z 1500.5 NaN -3.25",
          "2024-11-30T07:20:00Z 1500.75 1601.0 -3.0");

  private static final String PLAIN =
      """
      time,f1_hz,f2_hz,air_temp_c
      2024-11-30 00:00:00,1500.25,1600.5,-3.5
      2024-11-30 00:10:00,1500.5,,-3.25
      2024-11-30 00:20:00,1500.75,1601,-3
      """;

  @TempDir Path folder;

  private void readsAsRows(String text) throws Exception {
    assertThat(Season.rows(Season.of(folder, text).read())).isEqualTo(ROWS);
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t", "|"})
  void anyCommonDelimiterIsFound(String delimiter) throws Exception {
    readsAsRows(PLAIN.replace(",", delimiter));
  }

  @Test
  void runsOfBlanksDelimitWhereStampsHoldNone() throws Exception {
    readsAsRows(PLAIN.replace(" 0", "T0").replace(",,", ",NaN,").replace(",", "   "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void anyLineEndIsTaken(String lineEnd) throws Exception {
    readsAsRows(PLAIN.replace("\n", lineEnd));
  }

  @Test
  void aWholeLastLineNeedsNoLineEnd() throws Exception {
    readsAsRows(PLAIN.stripTrailing());
  }

  @ParameterizedTest
  @ValueSource(strings = {";", "\t", "|"})
  void decimalCommasAreFound(String delimiter) throws Exception {
    readsAsRows(PLAIN.replace(",", delimiter).replace(".", ","));
  }

  @Test
  void decimalCommasInQuotesAreFoundAmongCommas() throws Exception {
    String quoted = PLAIN.replaceAll("(-?\\d+)\\.(\\d+)", "\"$1,$2\"");
    assertThat(quoted).contains("\"1500,25\",\"1600,5\"");
    readsAsRows(quoted);
  }

  @Test
  void quotesAreTakenOffEveryField() throws Exception {
    readsAsRows(PLAIN.replaceAll("([^,\n]+)", "\"$1\""));
    readsAsRows(PLAIN.replaceAll("([^,\n]+)", "\"$1\"").replace(",", ", "));
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8, false",
    "UTF-8, true",
    "UTF-16LE, true",
    "UTF-16BE, true",
    "UTF-16LE, false",
    "UTF-16BE, false"
  })
  void unicodeIsFoundWithAndWithoutByteOrderMark(String charset, boolean mark) throws Exception {
    byte[] bytes = ((mark ? "\ufeff" : "") + PLAIN).getBytes(Charset.forName(charset));
    SeasonRecord record = Season.in(folder).bytes("a.csv", bytes).read();
    assertThat(Season.rows(record)).isEqualTo(ROWS);
    assertThat(record.provenance().files().get(0).dialect()).contains(charset);
  }

  @Test
  void latin1IsFoundByTheDegreeSign() throws Exception {
    String units = "TS,Hz,Hz,°C\n";
    String text = PLAIN.replaceFirst("\n", "\n" + units);
    SeasonRecord record = Season.in(folder).file("a.csv", text, ISO_8859_1).read();
    assertThat(Season.rows(record)).isEqualTo(ROWS);
    assertThat(record.provenance().files().get(0).dialect()).contains("Latin-1");
  }

  @Test
  void gzipIsKnownByItsBytesWhateverTheName() throws Exception {
    Season.in(folder).bytes("a.csv", Season.gzip(PLAIN));
    assertThat(Season.rows(Season.in(folder).read())).isEqualTo(ROWS);
  }

  @Test
  void aPatternForCsvAlsoFindsItPacked() throws Exception {
    Season season = Season.in(folder).bytes("b.csv.gz", Season.gzip(PLAIN));
    assertThat(Season.rows(season.read())).isEqualTo(ROWS);
  }

  @Test
  void preambleUnitsAndSamplingRowsAreNoRows() throws Exception {
    String text =
        "\"TABLE\",\"Test Ridge\",\"ten_min\"\n# set up in autumn\n\n"
            + PLAIN.replaceFirst(
                "\n", "\n\"TS\",\"Hz\",\"Hz\",\"degC\"\n\"\",\"Smp\",\"Avg\",\"Avg\"\n");
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(Season.rows(record)).isEqualTo(ROWS);
    assertThat(Season.setAside(record))
        .containsExactly(
            "records/a.csv 1-1 PREAMBLE",
            "records/a.csv 2-2 COMMENT",
            "records/a.csv 3-3 BLANK",
            "records/a.csv 4-4 HEADER",
            "records/a.csv 5-6 UNITS");
  }

  @Test
  void aHeaderMayBeAComment() throws Exception {
    readsAsRows("# " + PLAIN);
  }

  @Test
  void aHeaderMayRunOverALineEndWithinQuotes() throws Exception {
    String text = PLAIN.replace("f1_hz,", "\"note\nof wire\",f1_hz,").replaceAll("(:00),", "$1,0,");
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(Season.rows(record)).isEqualTo(ROWS);
    assertThat(Season.setAside(record)).containsExactly("records/a.csv 1-2 HEADER");
  }

  @Test
  void namesMatchWithoutRegardToCaseAndBlanks() throws Exception {
    readsAsRows(PLAIN.replace("time,f1_hz", " TIME , F1_Hz "));
  }

  @Test
  void otherColumnsMayStandAnywhere() throws Exception {
    readsAsRows(PLAIN.replace("time,", "n,time,note,").replaceAll("(2024[^,]+),", "7,$1,ok,"));
  }

  @Test
  void emptyFieldsAfterTheLastAreNothing() throws Exception {
    readsAsRows(PLAIN.replace("\n", ",\n"));
    readsAsRows(PLAIN.replace("-3.5\n", "-3.5,,\n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "NAN",
        "NaN",
        "nan",
        "\"NAN\"",
        "NA",
        "n/a",
        "null",
        "-9999",
        "-9999.00",
        "-6999",
        "INF",
        "--",
        " "
      })
  void tokensForAMissingValueAreKnown(String token) throws Exception {
    SeasonRecord record =
        Season.of(folder, PLAIN.replace("1500.5,,", "1500.5," + token + ",")).read();
    assertThat(Season.rows(record)).isEqualTo(ROWS);
    assertThat(record.provenance().files().get(0).missingFields()).isEqualTo(1);
    assertThat(record.provenance().files().get(0).unreadableFields()).isEmpty();
  }

  @Test
  void anUnreadableFieldIsMissingAndNoted() throws Exception {
    SeasonRecord record = Season.of(folder, PLAIN.replace("1500.5,,", "1500.5,ERR 7,")).read();
    assertThat(Season.rows(record)).isEqualTo(ROWS);
    FileAccount account = record.provenance().files().get(0);
    assertThat(account.unreadableFields())
        .containsExactly(new FileAccount.FieldNote(3, "f2_hz", "ERR 7"));
    assertThat(account.unreadableCount()).isEqualTo(1);
    assertThat(account.missingFields()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0x10", "12f", "1e999", "12:30", "1.2.3", "+", ".", "1_000"})
  void whatIsNotADecimalNumberIsUnreadable(String text) throws Exception {
    SeasonRecord record =
        Season.of(folder, PLAIN.replace("1500.5,,", "1500.5," + text + ",")).read();
    assertThat(record.provenance().files().get(0).unreadableCount()).isEqualTo(1);
  }

  @Test
  void theSheetOverridesDelimiterAndDecimalMark() throws Exception {
    String text = PLAIN.replace(",", "/").replace(".", ",");
    Season season = Season.of(folder, text.replace("time/", "time/")).delimiter('/').decimal(',');
    assertThat(Season.rows(season.read())).isEqualTo(ROWS);
  }

  @Test
  void channelsAreConvertedAndFrequenciesAreNot() throws Exception {
    SeasonRecord record = Season.of(folder, PLAIN).temperatureIn(Unit.KELVIN).read();
    assertThat(record.channel(0).get(2)).isEqualTo(-276.15);
    assertThat(record.frequency(0).get(2)).isEqualTo(1500.75);
  }
}
