package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.record.RecordPreview;

class SheetDraftTest {

  @TempDir Path folder;

  private SheetDraft draft(String text) throws Exception {
    Files.writeString(Files.createDirectories(folder.resolve("records")).resolve("a.csv"), text);
    return SheetDraft.of(RecordPreview.of(folder), "Example Ridge");
  }

  @Test
  void whatAFileCannotTellStandsAsNull() throws Exception {
    SheetDraft draft = draft("time,f1_hz\n2024-11-30 00:00,1500.5\n2024-11-30 00:10,1501\n");
    assertThat(draft.text()).contains("\"wind_shield\": null", "\"missing\": []");
    assertThat(draft.toEnter())
        .anyMatch(line -> line.contains("wind_shield if known (null reads as other)"))
        .noneMatch(line -> line.contains("gate_s"));
    assertThat(draft.guessed())
        .contains("column f1_hz is a wire: 1500.5 to 1501.0 Hz in the first rows");
  }

  @Test
  void missingTokensAreThoseSeen() throws Exception {
    SheetDraft draft =
        draft(
            "time,f1_hz,f2_hz\n2024-11-30 00:00,1500.5,-9999\n2024-11-30 00:10,NAN,1501\n"
                + "2024-11-30 00:20,NAN,1500\n");
    assertThat(draft.text()).contains("\"missing\": [\"NAN\", \"-9999\"]");
  }

  @Test
  void largeWholeNumbersMayBeCounts() throws Exception {
    SheetDraft draft =
        draft(
            "time,record,n1,n2,air_temp_c\n2024-11-30 00:00,90001,34256,34412,-5\n"
                + "2024-11-30 00:10,90002,34256,34410,-5\n");
    assertThat(draft.toEnter())
        .contains(
            "record: if n1, n2 are counts, frequency_kind: \"counts\" and gate_s, the gate time"
                + " [s]");
  }
}
