package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

class ProgressTest {

  private static final Path SEASON = Path.of("sample-sets", "hard-winter");

  /** Keeps what it hears and calls the work off after so many words. */
  private static final class Listener implements Progress {
    private final List<String> stages = new CopyOnWriteArrayList<>();
    private final List<Double> shares = new CopyOnWriteArrayList<>();
    private final int patience;

    Listener(int patience) {
      this.patience = patience;
    }

    @Override
    public void at(String stage, double share) {
      stages.add(stage);
      shares.add(share);
    }

    @Override
    public boolean cancelled() {
      return stages.size() >= patience;
    }
  }

  @Test
  void openingIsHeardStageByStage() throws InputException {
    Listener reading = new Listener(Integer.MAX_VALUE);
    Season season = Season.open(SEASON, reading);
    assertThat(reading.stages).contains("reading the record");
    Listener depths = new Listener(Integer.MAX_VALUE);
    SeasonDepths stage = SeasonDepths.of(season, depths);
    assertThat(depths.stages)
        .contains("converting frequencies to depths", "screening the readings");
    Listener rest = new Listener(Integer.MAX_VALUE);
    SeasonResult.of(stage, rest);
    assertThat(rest.stages).contains("combining the wires", "smoothing the level");
    assertThat(rest.shares).isSorted().allMatch(share -> share >= 0 && share <= 1);
  }

  @Test
  void everyStageCanBeCalledOff() throws InputException {
    assertThatThrownBy(() -> Season.open(SEASON, new Listener(1)))
        .isInstanceOf(CancellationException.class);
    Season season = Season.open(SEASON);
    assertThatThrownBy(() -> SeasonDepths.of(season, new Listener(1)))
        .isInstanceOf(CancellationException.class);
    SeasonDepths depths = SeasonDepths.of(season, Progress.NONE);
    for (int patience : new int[] {0, 3, 6, 9}) {
      assertThatThrownBy(() -> SeasonResult.of(depths, new Listener(patience)))
          .isInstanceOf(CancellationException.class);
    }
  }

  @Test
  void aPartOfTheWorkCountsAsItsShareOfTheWhole() {
    Listener whole = new Listener(2);
    Progress part = whole.part(0.5, 0.75);
    part.step("one", 0);
    part.step("two", 1);
    assertThat(whole.shares).containsExactly(0.5, 0.75);
    assertThatThrownBy(() -> part.step("three", 1)).isInstanceOf(CancellationException.class);
  }

  @Test
  void aNotebookReadAgainIsThatOfTheFolder() throws InputException {
    Season season = Season.open(SEASON);
    assertThat(season.withNotebookIn(SEASON)).isEqualTo(season);
  }
}
