package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.CatchForm;
import org.rimebook.desk.model.FigureModel;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.ReportModel;
import org.rimebook.desk.model.StripSetting;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.notebook.Entry;

/** What the window makes for paper is what the command line makes. */
class PaperModelsTest {

  @TempDir private Path folder;
  private final Desk desk = new Desk();

  private Path season() throws IOException {
    Path season = Copies.of(Path.of("sample-sets", "quiet-valley"), folder.resolve("season"));
    desk.keeper.open(season);
    return season;
  }

  @Test
  void theReportIsThatOfTheCommandLineByteForByte() throws IOException {
    Path season = season();
    ReportModel model = new ReportModel(desk.workspace, desk);
    model.make(true);
    Path line = folder.resolve("line.pdf");
    assertThat(Terminal.run("report", season, "--out", line, "--hours").code()).isZero();
    assertThat(model.made().get().orElseThrow().pdf()).isEqualTo(Files.readAllBytes(line));
    Path saved = folder.resolve("saved.pdf");
    model.save(saved);
    assertThat(saved).hasSameBinaryContentAs(line);
    assertThat(desk.workspace.notice().get())
        .isEqualTo(new Notice(Notice.Weight.NOTE, "The report is saved as " + saved));
  }

  @Test
  void theReportWaitsUntilTotalsAreSettledAndCanBeGivenUp() throws IOException {
    season();
    ReportModel model = new ReportModel(desk.workspace, desk);
    desk.hold(Lane.SETTLE);
    desk.keeper.write(
        List.of(new Entry.Remark(new Entry.Header("", "", "", "calm"), Optional.empty())));
    desk.hold(Lane.REPORT);
    model.make(false);
    assertThat(model.state().get().busy()).isTrue();
    model.cancel();
    desk.release();
    assertThat(model.made().get()).isEmpty();
    assertThat(model.state().get().busy()).isFalse();
  }

  @Test
  void aReportDoesntGoAmongTheRecordNorUnderAnotherEnding() throws IOException {
    Path season = season();
    ReportModel model = new ReportModel(desk.workspace, desk);
    assertThat(model.obstacle(season.resolve("records").resolve("a.pdf")).orElseThrow())
        .contains("would be read as such");
    assertThat(model.obstacle(folder.resolve("a.txt")).orElseThrow()).contains(".pdf");
    assertThat(model.obstacle(model.suggestedFile())).isEmpty();
  }

  @Test
  void aFigureHasTheStripsInSightInTheirForm() throws IOException {
    season();
    FigureModel model = new FigureModel(desk.workspace, desk);
    assertThat(model.strips())
        .containsExactly(
            FigureStrip.FREQUENCY,
            FigureStrip.DEPTH,
            FigureStrip.CATCH,
            FigureStrip.TEMPERATURE,
            FigureStrip.WIND,
            FigureStrip.SUPPLY);
    desk.workspace.catchForm().set(CatchForm.DAILY);
    desk.workspace.strips().set(List.of(new StripSetting(StripSetting.Kind.CATCH, true, 1, true)));
    assertThat(model.strips()).containsExactly(FigureStrip.DAILY);
  }

  @Test
  void aFigureIsThatOfTheCommandLineForTheSameView() throws IOException {
    Path season = season();
    FigureModel model = new FigureModel(desk.workspace, desk);
    desk.workspace.strips().set(List.of(new StripSetting(StripSetting.Kind.DEPTH, true, 1, true)));
    Path saved = folder.resolve("saved.svg");
    FigureModel.Wish wish = new FigureModel.Wish(saved, 120, 80, 300);
    assertThat(model.obstacle(wish)).isEmpty();
    model.start(wish);
    Path line = folder.resolve("line.svg");
    Terminal.run(
        "figure",
        season,
        "--out",
        line,
        "--show",
        "depth",
        "--width-mm",
        "120",
        "--height-mm",
        "80",
        "--from",
        "2023-11-01T00:00:00-08:00",
        "--to",
        "2024-05-01T00:00:00-08:00");
    assertThat(desk.workspace.view().visible().get().fromMs())
        .isBetween(1698825600000L - 3_600_000, 1698825600000L + 3_600_000);
    assertThat(Files.readString(saved)).contains("Depth (mm)", "bucket");
    assertThat(line).exists();
  }
}
