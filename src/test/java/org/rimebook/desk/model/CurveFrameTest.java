package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CurveFrameTest {

  @TempDir Path folder;

  @Test
  void theFrameHoldsTheEmptyBucketTheFullOneAndTheReadings() throws Exception {
    SeasonDraft draft =
        LoggerFile.entered(LoggerFile.in(folder)).draft().get().with(StationField.CAPACITY, "400");
    CurveFrame frame = CurveFrame.of(draft, FirstReadings.of(draft)).orElseThrow();
    assertThat(frame.hz().share(1000)).isPositive();
    // 400 mm at 1e-5 (f^2 - 1000^2) = 40 cm, so f = 2236 Hz.
    assertThat(frame.hz().share(2236)).isBetween(0.9, 1.0);
    assertThat(frame.mm().share(0)).isBetween(0.0, 0.1);
    assertThat(frame.mm().share(400)).isBetween(0.9, 1.0);
    assertThat(frame.mm().ticks()).contains(0, 100, 200, 300, 400);
  }

  @Test
  void thereIsNoFrameWithoutACurve() throws Exception {
    NewSeason season = LoggerFile.season(LoggerFile.in(folder));
    assertThat(CurveFrame.of(season.draft().get(), season.readings().get())).isEmpty();
  }

  @Test
  void aCurveThatTurnsBackIsDrawnToWhereItTurns() throws Exception {
    SeasonDraft draft =
        LoggerFile.entered(LoggerFile.in(folder))
            .draft()
            .get()
            .with(0, WireField.B, "-1e-5")
            .with(1, WireField.B, "");
    FirstReadings readings = FirstReadings.of(draft);
    CurveFrame frame = CurveFrame.of(draft, readings).orElseThrow();
    // It turns at f0 + A / (2 * 1e-5) = 2000 Hz.
    assertThat(frame.endHz(readings.wires().get(0).curve().orElseThrow())).isEqualTo(2000);
  }
}
