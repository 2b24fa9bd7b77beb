package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.InputException;

class RecordPreviewTest {

  @TempDir Path folder;

  @Test
  void columnsAreShownWithUnitKindAndSpread() throws Exception {
    Season.of(
        folder,
        "table;Test Ridge\nTIMESTAMP;RECORD;Wire1;State\nTS;RN;Hz;\n;;Smp;Smp\n"
            + "2024-11-30 00:00:00;1;1500,5;ok\n2024-11-30 00:10:00;2;1510,5;ok\n"
            + "2024-11-30 00:20:00;3;NAN;ok\n2024-11-30 00:30:00;4;1530,5;ok\n");
    RecordPreview preview = RecordPreview.of(folder);
    assertThat(preview.files()).containsExactly("records/a.csv");
    assertThat(preview.patterns()).containsExactly("records/*.csv");
    assertThat(preview.dialect())
        .startsWith("semicolon between fields, decimal comma, time such as 2024-11-30 00:00:00");
    assertThat(preview.rows().get(1)).containsExactly("2024-11-30 00:10:00", "2", "1510,5", "ok");
    assertThat(preview.number(1, 2)).hasValue(1510.5);
    assertThat(preview.number(2, 2)).isEmpty();
    assertThat(preview.columns())
        .extracting(PreviewColumn::name)
        .containsExactly("TIMESTAMP", "RECORD", "Wire1", "State");
    assertThat(preview.columns())
        .extracting(PreviewColumn::unitText)
        .containsExactly("TS", "RN", "Hz", "Smp");
    assertThat(preview.columns())
        .extracting(PreviewColumn::kind)
        .containsExactly(
            PreviewColumn.Kind.TIME,
            PreviewColumn.Kind.NUMBER,
            PreviewColumn.Kind.NUMBER,
            PreviewColumn.Kind.TEXT);
    PreviewColumn wire = preview.columns().get(2);
    assertThat(wire.least()).hasValue(1500.5);
    assertThat(wire.median()).hasValue(1510.5);
    assertThat(wire.greatest()).hasValue(1530.5);
    assertThat(preview.columns().get(3).median()).isEmpty();
  }

  @Test
  void missingTokensAndWholeNumbersAreShownAsSeen() throws Exception {
    Season.of(
        folder,
        "time,c1,f1,note\n2024-11-30 00:00,34256,1500.5,NAN\n2024-11-30 00:10,-9999,NAN,x\n"
            + "2024-11-30 00:20,34257,,y\n2024-11-30 00:30,34258,nan,z\n");
    assertThat(RecordPreview.of(folder).columns())
        .extracting(PreviewColumn::whole, PreviewColumn::missing)
        .containsExactly(
            tuple(false, List.of()),
            tuple(true, List.of("-9999")),
            tuple(false, List.of("NAN", "nan")),
            tuple(false, List.of()));
  }

  @Test
  void secondsSince1970AreATimeWhenTheyGoUp() throws Exception {
    Season.of(folder, "t,f\n1733011800,1500.5\n1733012400,1501.5\n");
    assertThat(RecordPreview.of(folder).columns())
        .extracting(PreviewColumn::kind)
        .containsExactly(PreviewColumn.Kind.TIME, PreviewColumn.Kind.NUMBER);
  }

  @Test
  void filesOfAnotherNameAreTakenWhenThereIsNoCsv() throws Exception {
    Season.in(folder).file("table.dat", Season.HEADER + Season.tenMinutes("2024-11-30", 0, 3));
    assertThat(RecordPreview.of(folder).patterns()).containsExactly("records/*");
  }

  @Test
  void aFolderWithoutRowsIsRefused() throws Exception {
    Season.in(folder).file("notes.txt", "nothing to see\n");
    assertThatThrownBy(() -> RecordPreview.of(folder))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("no rows with a header above them");
  }

  @Test
  void filesAnywhereAreShownAsTheyWillBeFoundInRecords() throws Exception {
    Path file = folder.resolve("download.dat");
    Files.writeString(file, "time,f1\n2024-11-30 00:00,1500.5\n2024-11-30 00:10,1500.6\n");
    RecordPreview preview = RecordPreview.ofFiles(List.of(file));
    assertThat(preview.files()).containsExactly("records/download.dat");
    assertThat(preview.patterns()).containsExactly("records/*");
  }
}
