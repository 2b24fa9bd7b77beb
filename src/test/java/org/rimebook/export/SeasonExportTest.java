package org.rimebook.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.Copies;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

class SeasonExportTest {

  private static final SeasonResult RESULT = Bucket.every(60, 48).result();

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"totals", "tables", "files"})
  void endedHalfwayItLeavesEveryFileAsItWas(String stage) throws IOException {
    SeasonExport.write(RESULT, Resolution.TENTH, folder, Progress.NONE);
    var before = Copies.bytes(folder);
    Progress ending =
        new Progress() {
          @Override
          public void at(String reached, double share) {
            if (reached.equals(stage)) {
              throw new CancellationException(reached);
            }
          }

          @Override
          public boolean cancelled() {
            return false;
          }
        };
    assertThatThrownBy(() -> SeasonExport.write(RESULT, Resolution.HUNDREDTH, folder, ending))
        .isInstanceOf(CancellationException.class);
    assertThat(Copies.bytes(folder)).isEqualTo(before);
  }

  @Test
  void theSharesOfProgressRise() throws IOException {
    double[] last = {0};
    SeasonExport.write(
        RESULT,
        Resolution.TENTH,
        folder,
        new Hearing(
            share -> {
              assertThat(share).isGreaterThan(last[0]).isLessThan(1);
              last[0] = share;
            }));
    assertThat(last[0]).isPositive();
  }

  private record Hearing(DoubleConsumer ear) implements Progress {
    @Override
    public void at(String stage, double share) {
      ear.accept(share);
    }

    @Override
    public boolean cancelled() {
      return false;
    }
  }
}
