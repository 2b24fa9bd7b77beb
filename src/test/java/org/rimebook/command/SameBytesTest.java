package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;

class SameBytesTest {

  private static final Path SEASON = Path.of("sample-sets", "quiet-valley");

  @TempDir private Path folder;

  private Path totals(Path season, String name, String... more) {
    Path out = folder.resolve(name);
    List<Object> words = new ArrayList<>(List.of("totals", season, "--out", out));
    words.addAll(List.of(more));
    Terminal run = Terminal.run(words.toArray());
    assertThat(run.code()).as(run.err()).isEqualTo(0);
    return out;
  }

  @Test
  void anotherLocaleZoneAndPlaceGiveTheSameBytes() throws IOException {
    Path first = totals(SEASON, "first");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      Path second = totals(Copies.of(SEASON, folder.resolve("elsewhere")), "second");
      assertThat(Copies.bytes(second)).isEqualTo(Copies.bytes(first));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void splittingAndShufflingTheLoggerFilesChangesNoTotal() throws IOException {
    Path shuffled = Copies.of(SEASON, folder.resolve("shuffled"));
    List<String> rows = new ArrayList<>();
    String header = "";
    for (String file : Copies.bytes(SEASON.resolve("records")).keySet()) {
      Path packed = SEASON.resolve("records").resolve(file);
      List<String> lines = Copies.unpacked(packed).lines().toList();
      header = lines.get(0);
      rows.addAll(lines.subList(1, lines.size()));
      Files.delete(shuffled.resolve("records").resolve(file));
    }
    Collections.shuffle(rows, new Random(7));
    for (int part = 0; part < 3; part++) {
      List<String> lines = new ArrayList<>(List.of(header));
      lines.addAll(rows.subList(part * rows.size() / 3, (part + 1) * rows.size() / 3));
      Copies.pack(lines, shuffled.resolve("records").resolve("part" + part + ".csv.gz"));
    }
    Path first = totals(SEASON, "first", "--no-report");
    Path second = totals(shuffled, "second", "--no-report");
    for (String table : List.of("hourly.csv", "daily.csv")) {
      assertThat(Files.readString(second.resolve(table)))
          .isEqualTo(Files.readString(first.resolve(table)));
    }
  }
}
