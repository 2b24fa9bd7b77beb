package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Damaged files: what stands around the damage is kept. */
class DamageTest {

  private static final String H = Season.HEADER;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {"2024-11-30 02:00:00,15", "2024-11-30 02:0", "2", "2024-11-30 02:00:00,1,2,"})
  void aCutLastLineIsSetAside(String cut) throws Exception {
    String text = H + Season.tenMinutes("2024-11-30", 0, 6) + cut;
    boolean whole = cut.endsWith(",");
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(whole ? 7 : 6);
    assertThat(Season.setAside(record).contains("records/a.csv 8-8 CUT_LINE")).isNotEqualTo(whole);
  }

  /** Each row: the last fields of the rows before, the last one, and whether that was cut. */
  @ParameterizedTest
  @CsvSource({
    "1726.951 1726.953, 1726, true",
    "1726.951 1726.953, 1726., true",
    "1726.951 1726.953, 1726.95, true",
    "1726.951 1726.953, 17, true",
    "1726.951 1726.953, 1726.952, false",
    "1726.951 1726.9, 1726.9, false",
    "1726.951 1726, 1726, false",
    "1726.951 NAN, NAN, false",
    "1726.951 NAN, 1726.9, true",
    "12.31 12.25, -2.06, false",
    "3426 3425, 342, true",
    "3426 3425, -342, true",
    "3426 3425, 3427, false",
    "3426 998, 342, false",
  })
  void aLastFieldShorterThanAllBeforeItWasCut(String before, String last, boolean cut)
      throws Exception {
    StringBuilder text = new StringBuilder("time,f1_hz,air_temp_c,f2_hz\n");
    for (int minute = 10; minute < 60; minute++) {
      String field = before.split(" ")[minute % 2];
      text.append("2024-11-30 00:").append(minute).append(",1500,-3,").append(field).append("\n");
    }
    text.append("2024-11-30 01:00,1500,-3,").append(last);
    SeasonRecord record = Season.of(folder, text.toString()).read();
    assertThat(record.size()).isEqualTo(cut ? 50 : 51);
    assertThat(Season.setAside(record).contains("records/a.csv 52-52 CUT_LINE")).isEqualTo(cut);
    assertThat(Season.of(folder, text + "\n").read().size()).isEqualTo(51);
  }

  @Test
  void aCutInAFieldNobodyAskedForCostsNothing() throws Exception {
    String head = "time,f1_hz,f2_hz,air_temp_c,battery_v\n";
    String text = head + Season.tenMinutes("2024-11-30", 0, 9).replace("\n", ",12.51\n");
    String cut = text.substring(0, text.length() - 2);
    assertThat(Season.of(folder, cut).read().size()).isEqualTo(9);
  }

  @Test
  void aCutLineBeforeTheLastHasTheWrongNumberOfFields() throws Exception {
    String text = H + "2024-11-30 00:00,15\n" + Season.tenMinutes("2024-11-30", 1, 6);
    SeasonRecord record = Season.of(folder, text).read();
    SetAside run = record.provenance().files().get(0).setAside().get(1);
    assertThat(run.reason()).isEqualTo(LineReason.FIELD_COUNT);
    assertThat(run.detail()).isEqualTo("2 fields where 4 belong");
    assertThat(record.size()).isEqualTo(6);
  }

  @Test
  void anArchiveThatBreaksOffIsReadUpToThere() throws Exception {
    byte[] packed = Season.gzip(H + Season.tenMinutes("2024-11-30", 0, 3000));
    byte[] broken = Arrays.copyOf(packed, packed.length / 2);
    SeasonRecord record = Season.in(folder).bytes("a.csv", broken).read();
    assertThat(record.size()).isBetween(500, 2900);
    FileAccount account = record.provenance().files().get(0);
    assertThat(account.dialect()).contains("gzip that breaks off");
    assertThat(Season.setAside(record).get(1)).endsWith("CUT_LINE");
    assertThat(account.lines()).isEqualTo(record.size() + 2);
  }

  @Test
  void zerosAfterAPowerFailureCostOnlyTheirOwnLine() throws Exception {
    String zeros = "\0".repeat(300);
    String text =
        H
            + Season.tenMinutes("2024-11-30", 0, 3)
            + zeros
            + "\n"
            + zeros
            + Season.tenMinutes("2024-11-30", 1, 3)
            + "2024-11-30 03:00:00,15"
            + zeros
            + ",1600,-3\n"
            + Season.tenMinutes("2024-11-30", 4, 3);
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(9);
    assertThat(Season.setAside(record))
        .containsExactly(
            "records/a.csv 1-1 HEADER",
            "records/a.csv 5-5 UNREADABLE",
            "records/a.csv 9-9 UNREADABLE");
  }

  @Test
  void aQuoteThatIsNeverClosedSwallowsNothing() throws Exception {
    String text =
        H
            + Season.tenMinutes("2024-11-30", 0, 3)
            + "2024-11-30 00:30:00,\"1503.5,1600,-3\n"
            + Season.tenMinutes("2024-11-30", 1, 3000);
    SeasonRecord record = Season.of(folder, text).read();
    assertThat(record.size()).isEqualTo(3004);
    assertThat(record.provenance().files().get(0).unreadableCount()).isEqualTo(1);
    assertThat(record.frequency(1).get(3)).isEqualTo(1600);
  }

  @Test
  void strayQuotesInSeparateLinesDoNotJoinThem() throws Exception {
    String stray = "2024-11-30 0%d:30:00,1503.5,1600,\"-3\n";
    String text =
        H
            + String.format(stray, 0)
            + Season.tenMinutes("2024-11-30", 1, 3)
            + String.format(stray, 2)
            + Season.tenMinutes("2024-11-30", 3, 3);
    assertThat(Season.of(folder, text).read().size()).isEqualTo(8);
  }

  @Test
  void aQuotedFieldOverLineEndsIsOneReadingOfSeveralLines() throws Exception {
    String text =
        "time,f1_hz,f2_hz,air_temp_c,note\n2024-11-30 00:00,1500,1600,-3,\"snow\r\non rim\"\n"
            + "2024-11-30 00:10,1500,1600,-3,\n";
    SeasonRecord record = Season.of(folder, text).read();
    FileAccount account = record.provenance().files().get(0);
    assertThat(record.size()).isEqualTo(2);
    assertThat(account.lines()).isEqualTo(4);
    assertThat(account.used()).isEqualTo(3);
    assertThat(record.provenance().lineOfRow().get(1)).isEqualTo(4);
  }

  @Test
  void everyLineOfATextThatIsNoRecordIsCounted() throws Exception {
    SeasonRecord record =
        Season.in(folder)
            .file("0.csv", "\"not a\r\nrecord\"\n\n# at all")
            .file("a.csv", H + Season.tenMinutes("2024-11-30", 0, 3))
            .read();
    assertThat(Season.setAside(record))
        .startsWith(
            "records/0.csv 1-2 UNREADABLE", "records/0.csv 3-3 BLANK", "records/0.csv 4-4 COMMENT");
    assertThat(record.provenance().files().get(0).lines()).isEqualTo(4);
  }

  @Test
  void aBinaryFileBesideTheRecordIsAccountedFor() throws Exception {
    byte[] binary = new byte[5000];
    new java.util.Random(7).nextBytes(binary);
    binary[0] = 7;
    SeasonRecord record =
        Season.in(folder)
            .bytes("0.csv", binary)
            .file("a.csv", H + Season.tenMinutes("2024-11-30", 0, 3))
            .read();
    assertThat(record.size()).isEqualTo(3);
    assertThat(record.provenance().files().get(0).dialect()).startsWith("no line of it is a row");
  }
}
