package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.AtOnce;
import org.rimebook.notebook.Entry;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;

class ViewKeeperTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2025-03-01T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path first;
  private Path second;
  private Workspace workspace;
  private SeasonKeeper keeper;
  private ViewKeeper views;

  @BeforeEach
  void twoSeasons() throws Exception {
    SeasonDraft draft = LoggerFile.entered(LoggerFile.in(folder)).draft().get();
    first = SeasonMaker.make(draft.into(folder.resolve("first")), Progress.NONE);
    second = SeasonMaker.make(draft.into(folder.resolve("second")), Progress.NONE);
    start();
  }

  private void start() {
    workspace = new Workspace();
    keeper = new SeasonKeeper(workspace, new AtOnce(), CLOCK);
    views = new ViewKeeper(workspace, memory(), CLOCK);
  }

  private Memory memory() {
    return new MemoryFile(
        folder.resolve("memory"),
        Runnable::run,
        notice -> {
          throw new AssertionError(notice.words());
        });
  }

  @Test
  void aSeasonOpensToTheViewItWasLeftIn() {
    keeper.open(first);
    Interval seen = part();
    workspace.view().go(seen);
    workspace.selection().set(Selection.NONE.only(seen));
    workspace.catchForm().set(CatchForm.HOURLY);
    workspace.drawer().set(Drawer.TOTALS);
    views.dividers().set(Map.of("page", 0.7));
    views.notebookFilter().set("visit");
    start();
    keeper.open(first);
    assertThat(workspace.view().visible().get()).isEqualTo(seen);
    assertThat(workspace.view().canGoBack()).isFalse();
    assertThat(workspace.selection().get().intervals()).containsExactly(seen);
    assertThat(workspace.catchForm().get()).isEqualTo(CatchForm.HOURLY);
    assertThat(workspace.drawer().get()).isEqualTo(Drawer.TOTALS);
    assertThat(views.dividers().get()).containsEntry("page", 0.7);
    assertThat(views.notebookFilter().get()).isEqualTo("visit");
  }

  @Test
  void seasonsOpenedInTurnKeepTheirOwnViews() {
    keeper.open(first);
    Interval seen = part();
    workspace.view().go(seen);
    views.notebookFilter().set("visit");
    keeper.open(second);
    assertThat(workspace.view().visible().get()).isEqualTo(workspace.view().whole());
    assertThat(views.notebookFilter().get()).isEmpty();
    keeper.open(first);
    assertThat(workspace.view().visible().get()).isEqualTo(seen);
    keeper.close();
    keeper.open(first);
    assertThat(workspace.view().visible().get()).isEqualTo(seen);
    assertThat(views.notebookFilter().get()).isEqualTo("visit");
  }

  @Test
  void anEntryDoesNotMoveTheView() {
    keeper.open(first);
    Interval seen = part();
    workspace.view().go(seen);
    keeper.write(
        List.of(new Entry.Remark(new Entry.Header("", "", "", "fine"), Optional.of(seen))));
    assertThat(workspace.view().visible().get()).isEqualTo(seen);
    assertThat(workspace.view().canGoBack()).isTrue();
  }

  @Test
  void stripsThatWereNotThereBeforeComeLast() {
    StripSetting only = new StripSetting(StripSetting.Kind.WIND, true, 4, false);
    keeper.open(first);
    workspace.strips().set(List.of(only));
    start();
    keeper.open(first);
    assertThat(workspace.strips().get()).startsWith(only);
    assertThat(workspace.strips().get())
        .extracting(StripSetting::kind)
        .containsExactlyInAnyOrder(StripSetting.Kind.values());
  }

  @Test
  void aSeasonOpenedIsRecentWithWhatItComesTo() {
    keeper.open(first);
    RecentSeason recent = memory().recent().get(0);
    assertThat(recent.folder()).isEqualTo(first);
    assertThat(recent.opened()).isEqualTo(CLOCK.instant());
    long units = workspace.computed().get().orElseThrow().totals().seasonUnits().orElseThrow();
    assertThat(recent.totalMm()).contains(workspace.resolution().get().toMm(units));
  }

  @Test
  void aSeasonThatCannotBeOpenedIsTold() {
    Throwable[] why = new Throwable[1];
    keeper.open(folder.resolve("nowhere"), fault -> why[0] = fault);
    assertThat(why[0]).isInstanceOf(InputException.class);
    assertThat(memory().recent()).isEmpty();
  }

  /** The second half of what there is. */
  private Interval part() {
    Interval whole = workspace.view().whole();
    return new Interval(whole.toMs() - whole.lengthMs() / 2, whole.toMs());
  }
}
