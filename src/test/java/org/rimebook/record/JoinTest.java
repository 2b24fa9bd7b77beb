package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JoinTest {

  private static final String H = Season.HEADER;

  @TempDir Path folder;

  @Test
  void overlapsAreTakenOnce() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("a.csv", H + Season.tenMinutes("2024-11-30", 0, 12))
            .file("b.csv", H + Season.tenMinutes("2024-11-30", 0, 18))
            .read();
    assertThat(record.size()).isEqualTo(18);
    assertThat(Season.setAside(record))
        .containsExactly(
            "records/a.csv 1-1 HEADER",
            "records/b.csv 1-1 HEADER",
            "records/b.csv 2-13 REPEATED_ROW");
    assertThat(record.provenance().fileOfRow().get(12)).isEqualTo(1);
    assertThat(record.provenance().lineOfRow().get(12)).isEqualTo(14);
  }

  @Test
  void filesAndRowsOutOfOrderAreSorted() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("a.csv", H + Season.tenMinutes("2025-02-01", 0, 12))
            .file(
                "b.csv",
                H + Season.tenMinutes("2024-11-30", 6, 6) + Season.tenMinutes("2024-11-30", 0, 6))
            .read();
    assertThat(record.size()).isEqualTo(24);
    assertThat(Season.rows(record).get(0)).startsWith("2024-11-30T07:00:00Z");
    assertThat(Season.setAside(record)).allMatch(line -> line.endsWith("HEADER"));
  }

  @Test
  void repeatedHeadersAndUnitsAreSkipped() throws Exception {
    String head = H + "TS,Hz,Hz,degC\n";
    SeasonRecord record =
        Season.of(
                folder,
                head
                    + Season.tenMinutes("2024-11-30", 0, 2)
                    + head
                    + Season.tenMinutes("2024-11-30", 1, 2))
            .read();
    assertThat(record.size()).isEqualTo(4);
    assertThat(Season.setAside(record)).contains("records/a.csv 5-6 REPEATED_HEADER");
  }

  @Test
  void aHeaderWithOtherColumnsHoldsFromThereOn() throws Exception {
    SeasonRecord record =
        Season.of(
                folder,
                H
                    + "2024-11-30 00:00,1500,1600,-3\n"
                    + "time,air_temp_c,f2_hz,f1_hz,battery_v\n2024-11-30 00:10,-4,1601,1501,12.6\n")
            .read();
    assertThat(Season.rows(record))
        .containsExactly(
            "2024-11-30T07:00:00Z 1500.0 1600.0 -3.0", "2024-11-30T07:10:00Z 1501.0 1601.0 -4.0");
  }

  @Test
  void rowsOfOneTimeThatAgreeFillEachOther() throws Exception {
    SeasonRecord record =
        Season.of(folder, H + "2024-11-30 00:00,1500,,-3\n2024-11-30 00:00,1500.0,1600,NAN\n")
            .read();
    assertThat(Season.rows(record)).containsExactly("2024-11-30T07:00:00Z 1500.0 1600.0 -3.0");
    assertThat(Season.setAside(record)).contains("records/a.csv 3-3 REPEATED_ROW");
    assertThat(record.provenance().files().get(0).missingFields()).isEqualTo(1);
  }

  @Test
  void ofRowsThatDisagreeTheFirstHoldsAndTheOtherIsReported() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("a.csv", H + "2024-11-30 00:00,1500,1600,-3\n")
            .file("b.csv", H + "2024-11-30 00:00,1500,1601.5,-3\n")
            .read();
    assertThat(Season.rows(record)).containsExactly("2024-11-30T07:00:00Z 1500.0 1600.0 -3.0");
    SetAside conflict = record.provenance().files().get(1).setAside().get(1);
    assertThat(conflict.reason()).isEqualTo(LineReason.CONFLICTING_ROW);
    assertThat(conflict.detail()).isEqualTo("f2_hz 1601.5 where records/a.csv, line 2 has 1600.0");
  }

  @Test
  void aFileWithoutHeaderIsReadUnderThatOfTheOthers() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("a.csv", Season.tenMinutes("2024-11-30", 0, 3))
            .file("b.csv", H + Season.tenMinutes("2024-11-30", 1, 3))
            .read();
    assertThat(record.size()).isEqualTo(6);
    assertThat(record.provenance().files().get(0).dialect())
        .endsWith("no header: columns as in records/b.csv");
  }

  @Test
  void aColumnAddedLaterIsMissingBefore() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("a.csv", "time,f1_hz,air_temp_c\n2024-11-30 00:00,1500,-3\n")
            .file("b.csv", H + "2024-11-30 00:10,1501,1601,-3\n")
            .read();
    assertThat(Season.rows(record))
        .containsExactly(
            "2024-11-30T07:00:00Z 1500.0 NaN -3.0", "2024-11-30T07:10:00Z 1501.0 1601.0 -3.0");
    assertThat(record.provenance().notes()).hasSize(1);
    assertThat(record.provenance().files().get(0).missingFields()).isZero();
  }

  @Test
  void anEmptyFileIsAccountedFor() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("a.csv", "")
            .file("b.csv", H + "2024-11-30 00:10,1501,1601,-3\n")
            .read();
    assertThat(record.provenance().files().get(0).lines()).isZero();
    assertThat(record.provenance().files().get(0).dialect()).isEqualTo("empty file");
  }

  @Test
  void theDigestIsThatOfNamesAndBytesInOrder() throws Exception {
    Season season =
        Season.in(folder)
            .file("b.csv", H + "2024-11-30 00:10,1501,1601,-3\n")
            .bytes("a.csv.gz", Season.gzip(H + "2024-11-30 00:00,1501,1601,-3\n"));
    java.security.MessageDigest digest = java.security.MessageDigest.getInstance("SHA-256");
    for (String name : List.of("records/a.csv.gz", "records/b.csv")) {
      digest.update((name + "\0").getBytes(java.nio.charset.StandardCharsets.UTF_8));
      digest.update(java.nio.file.Files.readAllBytes(folder.resolve(name)));
    }
    assertThat(season.read().provenance().digest().record())
        .isEqualTo(java.util.HexFormat.of().formatHex(digest.digest()));
  }

  @Test
  void aRecordToBeSeenSoonIsTheSameAndSoIsItsDigest() throws Exception {
    Season season =
        Season.in(folder)
            .file("b.csv", H + "2024-11-30 00:10,1501,1601,-3\n")
            .bytes("a.csv.gz", Season.gzip(H + "2024-11-30 00:00,1501,1601,-3\n"));
    SeasonRecord soon = season.readSoon();
    SeasonRecord record = season.read();
    assertThat(Season.rows(soon)).isEqualTo(Season.rows(record));
    assertThat(soon.provenance().digest()).isEqualTo(record.provenance().digest());
    assertThat(soon.provenance().digest().files())
        .isEqualTo(record.provenance().digest().files())
        .hasSize(2);
  }

  @Test
  void whatHasChangedSinceItWasReadIsNotTakenForWhatWasRead() throws Exception {
    Season season = Season.of(folder, H + "2024-11-30 00:00,1501,1601,-3\n");
    SeasonRecord soon = season.readSoon();
    season.file("a.csv", H + "2024-11-30 00:00,1501,1601,-3\n2024-11-30 00:10,1501,1601,-3\n");
    assertThatThrownBy(() -> soon.provenance().digest().record())
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("records/a.csv has changed since it was read");
  }
}
