package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;

class NewSeasonTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void aLoggerFile() throws Exception {
    file = LoggerFile.in(folder);
  }

  @Test
  void columnsAreRecognised() throws Exception {
    SeasonDraft draft = LoggerFile.season(file).draft().get();
    assertThat(draft.columns())
        .extracting(ColumnUse::role)
        .startsWith(ColumnRole.TIME, ColumnRole.WIRE, ColumnRole.WIRE, ColumnRole.AIR_TEMPERATURE);
    assertThat(draft.columns().get(3).unit()).contains(Unit.DEG_C);
    assertThat(draft.folder()).isEqualTo(folder.resolve("download"));
    assertThat(draft.text(StationField.NAME)).isEqualTo("download");
  }

  @Test
  void everyFieldThatIsNeededIsCountedUntilItIsEntered() throws Exception {
    NewSeason season = LoggerFile.season(file);
    // Two of the station, and A, B and f0 of two wires.
    assertThat(season.check().get().open()).isEqualTo(2 + 2 * 3);
    assertThat(LoggerFile.entered(file).check().get().complete()).isTrue();
  }

  @Test
  void aCalibrationThatFallsIsRefusedAndAStraightOneOnlyTold() throws Exception {
    NewSeason season = LoggerFile.entered(file);
    season.draft().set(season.draft().get().with(0, WireField.A, "-0.02"));
    season.draft().set(season.draft().get().with(1, WireField.B, "0"));
    List<WireCheck> wires = season.check().get().wires();
    assertThat(wires.get(0).faults()).singleElement().asString().contains("A = -0.02 cm/Hz");
    assertThat(wires.get(1).faults()).isEmpty();
    assertThat(wires.get(1).alerts()).anyMatch(alert -> alert.contains("straight line"));
    assertThat(season.check().get().complete()).isFalse();
  }

  @Test
  void aCalibrationOfAnotherWireShowsInAnImpossibleDepth() throws Exception {
    NewSeason season = LoggerFile.entered(file);
    season.draft().set(season.draft().get().with(0, WireField.F0, "1700"));
    assertThat(season.check().get().wires().get(0).alerts())
        .anyMatch(alert -> alert.contains("another wire's"));
  }

  @Test
  void theFirstReadingsLieOnTheCurves() throws Exception {
    FirstReadings readings = LoggerFile.entered(file).readings().get();
    // By hand: 0.02 * 500 + 1e-5 * 500^2 = 12.5 cm; 0.02 * 450 + 1e-5 * 450^2 = 11.025 cm.
    assertThat(readings.depthMm(0, 0).orElseThrow()).isCloseTo(125, within(1e-9));
    assertThat(readings.depthMm(0, 1).orElseThrow()).isCloseTo(110.25, within(1e-9));
    assertThat(readings.spreadMm(0).orElseThrow()).isCloseTo(14.75, within(1e-9));
    assertThat(readings.times().get(1)).isEqualTo("2024-12-01 00:01");
  }

  @Test
  void countsAreDividedByTheGateTime() throws Exception {
    NewSeason season = LoggerFile.entered(file);
    season.draft().set(season.draft().get().with(StationField.GATE, "1,25"));
    // 1500 counts in 1.25 s are 1200 Hz: 0.02 * 200 + 1e-5 * 200^2 = 4.4 cm.
    assertThat(season.readings().get().depthMm(0, 0).orElseThrow()).isCloseTo(44, within(1e-9));
    StationSheet sheet = DraftCheck.read(season.draft().get());
    assertThat(sheet.layout().gateS()).hasValue(1.25);
  }

  @Test
  void thereIsOneTimeAndAWireForEachColumnThatIsOne() throws Exception {
    NewSeason season = LoggerFile.entered(file);
    SeasonDraft draft = season.draft().get();
    season.draft().set(draft.with(1, ColumnUse.of(ColumnRole.UNUSED)));
    assertThat(season.draft().get().wires()).extracting(WireDraft::column).containsExactly("f2_hz");
    season.draft().set(season.draft().get().with(5, ColumnUse.of(ColumnRole.TIME)));
    assertThat(season.draft().get().columns().get(0).role()).isEqualTo(ColumnRole.UNUSED);
    season.draft().set(season.draft().get().with(5, ColumnUse.of(ColumnRole.UNUSED)));
    assertThat(season.check().get().columns()).anyMatch(words -> words.contains("the time"));
  }

  @Test
  void aWireThatComesBackKeepsNothingOfAnother() throws Exception {
    NewSeason season = LoggerFile.entered(file);
    SeasonDraft without = season.draft().get().with(1, ColumnUse.of(ColumnRole.UNUSED));
    SeasonDraft back = without.with(1, ColumnUse.of(ColumnRole.WIRE));
    assertThat(back.wires().get(0).text(WireField.A)).isEmpty();
    assertThat(back.wires().get(1).text(WireField.A)).isEqualTo(LoggerFile.A);
  }

  @Test
  void twoWiresOfOneNameAreRefusedAtBoth() throws Exception {
    NewSeason season = LoggerFile.entered(file);
    season.draft().set(season.draft().get().with(1, WireField.NAME, " wire 1 "));
    assertThat(season.check().get().wires())
        .allMatch(wire -> wire.fields().containsKey(WireField.NAME));
  }

  @Test
  void aFolderWithARecordIsTheSeasonFolderItself() throws Exception {
    Path records = Files.createDirectories(folder.resolve("winter/records"));
    Files.copy(file, records.resolve("a.csv"));
    SeasonSource source = SeasonSource.of(List.of(folder.resolve("winter")));
    assertThat(source.folder()).isEqualTo(folder.resolve("winter"));
    assertThat(source.copies()).isEmpty();
  }

  @Test
  void whatIsDroppedIsTakenForWhatItIs() throws Exception {
    Path season = Files.createDirectories(folder.resolve("winter"));
    Path sheet = Files.writeString(season.resolve("station.json"), "{}");
    assertThat(Dropped.of(List.of(season)))
        .isEqualTo(new Dropped(Dropped.Kind.SEASON, List.of(season)));
    assertThat(Dropped.of(List.of(sheet)))
        .isEqualTo(new Dropped(Dropped.Kind.SEASON, List.of(season)));
    assertThat(Dropped.of(List.of(file)).kind()).isEqualTo(Dropped.Kind.RECORD);
    assertThat(Dropped.of(List.of(folder)).kind()).isEqualTo(Dropped.Kind.RECORD);
  }
}
