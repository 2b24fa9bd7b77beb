package org.rimebook.export.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.export.FurtherFile;
import org.rimebook.export.SeasonExport;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;

class FurtherFileTest {

  private static final FurtherFile REPORT =
      new FurtherFile() {
        @Override
        public String fileName() {
          return "report.pdf";
        }

        @Override
        public byte[] bytes(SeasonResult result, Resolution resolution) {
          String text = result.season().sheet().name() + " at " + resolution.mm();
          return text.getBytes(StandardCharsets.UTF_8);
        }
      };

  @Test
  void aReportTheProgramCanMakeIsHeldToItsBytes(@TempDir Path temp)
      throws IOException, InputException {
    Path folder = Files.createDirectory(temp.resolve("season"));
    KeptSeason.in(folder);
    Season season = Season.open(folder);
    Path tables = temp.resolve("tables");
    SeasonExport.write(SeasonResult.of(season), Resolution.HUNDREDTH, List.of(REPORT), tables);
    assertThat(Verification.of(season, tables, List.of(REPORT)).follows()).isTrue();
    Files.writeString(tables.resolve("report.pdf"), "Invented Ridge at 0.1");
    Verification otherwise = Verification.of(season, tables, List.of(REPORT));
    assertThat(otherwise.follows()).isFalse();
    assertThat(otherwise.files())
        .last()
        .satisfies(file -> assertThat(file.words()).contains("byte 21"));
  }
}
