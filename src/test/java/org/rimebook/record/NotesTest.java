package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/** Faults that don't stop the reading are said, once for each file and reason. */
class NotesTest {

  private static final String H = Season.HEADER;

  @TempDir Path folder;

  private static List<String> notes(Season season) throws Exception {
    return season.read().provenance().notes().stream().map(Problem::toString).toList();
  }

  @Test
  void aSoundRecordHasNone() throws Exception {
    String head = "table,Test Ridge\n" + H + "TS,Hz,Hz,degC\n";
    String rows = "# restarted\n\n" + Season.tenMinutes("2024-11-30", 0, 9);
    assertThat(notes(Season.of(folder, head + rows + H).file("b.csv", H + rows))).isEmpty();
  }

  @Test
  void aColumnAbsentFromOneFileIsNamedWithTheNearest() throws Exception {
    Season season =
        Season.of(folder, H + Season.tenMinutes("2024-11-30", 0, 3))
            .file("b.csv", "#\ntime,f1_hz,f2hz,air_temp_c\n2024-12-01 00:00,1500,1600,-3\n");
    assertThat(notes(season))
        .containsExactly(
            "records/b.csv, line 2: no column \"f2_hz\" in this file, so it counts as missing; the"
                + " nearest are \"f1_hz\", \"f2hz\", \"time\". If one of them is meant, correct"
                + " the file's header");
  }

  @Test
  void linesSetAsideAreCountedByReason() throws Exception {
    String text =
        H
            + "soon,1500,1600,-3\n"
            + Season.tenMinutes("2024-11-30", 0, 3)
            + "2024-11-30 00:00,1501,1600,-3\n2024-11-30 00:30,1500\nlater,1500,1600,-3\n"
            + Season.tenMinutes("2024-11-30", 1, 3)
            + "2024-11-30 01:30,15";
    assertThat(notes(Season.of(folder, text)))
        .containsExactly(
            "records/a.csv, line 2: the first of 2 lines set aside: time can't be read (\"soon\")",
            "records/a.csv, line 6: set aside: same time as a reading already taken, other values"
                + " (f1_hz 1501.0 where records/a.csv, line 3 has 1500.5)",
            "records/a.csv, line 7: set aside: wrong number of fields (2 fields where 4 belong)",
            "records/a.csv, line 12: set aside: cut last line (2 fields where 4 belong)");
  }

  @Test
  void fieldsThatCannotBeReadAreCountedByColumn() throws Exception {
    String rows = Season.tenMinutes("2024-11-30", 0, 9);
    String text = H + rows.replace(",-3\n", ",cold\n").replace("1503.5", "oops");
    assertThat(notes(Season.of(folder, text)))
        .containsExactly(
            "records/a.csv, line 2: the first of 9 fields of column \"air_temp_c\" taken as missing,"
                + " not being a number: \"cold\". That is more than half of the"
                + " column: check record.decimal, record.delimiter and record.missing in"
                + " station.json",
            "records/a.csv, line 5: a field of column \"f1_hz\" taken as missing, not being a"
                + " number: \"oops\"");
  }

  @Test
  void aFileWithAnotherDelimiterThanStatedIsNamedAndTheOthersAreRead() throws Exception {
    String rows = H + Season.tenMinutes("2024-11-30", 0, 9);
    Season season = Season.of(folder, rows).file("b.csv", rows.replace(",", ";")).delimiter(';');
    assertThat(notes(season))
        .containsExactly(
            "records/a.csv, line 1: the header isn't found with record.delimiter semicolon of"
                + " station.json, and is with comma. Correct record.delimiter or leave it out: the"
                + " file shows it by itself",
            "records/a.csv, line 1: the first of 10 lines set aside: can't be read");
  }

  @Test
  void aWrongDelimiterForEveryFileIsTheSuspectNamed() throws Exception {
    Season season = Season.of(folder, H + Season.tenMinutes("2024-11-30", 0, 9)).delimiter('\t');
    assertThatThrownBy(season::read)
        .isInstanceOf(InputException.class)
        .hasMessageStartingWith(
            "records/a.csv, line 1: the header isn't found with record.delimiter tab of"
                + " station.json, and is with comma.");
  }
}
