package org.rimebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.LoggerFile;
import org.rimebook.desk.model.MemoryFile;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.SeasonMaker;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.fixture.AtOnce;
import org.rimebook.station.Progress;

class StartScreenTest {

  @TempDir Path folder;
  private Workspace workspace;
  private StartScreen screen;

  @BeforeEach
  void atTheStart() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.install(Theme.LIGHT);
          workspace = new Workspace();
          Tasks tasks = new AtOnce();
          SeasonKeeper keeper = new SeasonKeeper(workspace, tasks, Clock.systemUTC());
          MemoryFile memory = new MemoryFile(folder.resolve("memory"), Runnable::run, notice -> {});
          screen = new StartScreen(workspace, keeper, tasks, memory, Clock.systemUTC());
        });
  }

  @Test
  void aSeasonThatOpensTakesItsPlaceAndGivesItBackWhenClosed() throws Exception {
    assertThat(screen.front().get()).isTrue();
    Path season =
        SeasonMaker.make(LoggerFile.entered(LoggerFile.in(folder)).draft().get(), Progress.NONE);
    SwingUtilities.invokeAndWait(() -> screen.take(List.of(season)));
    assertThat(workspace.opened().get()).isPresent();
    assertThat(screen.front().get()).isFalse();
    SwingUtilities.invokeAndWait(
        () -> action("Close season").actionPerformed(new ActionEvent(screen, 0, "")));
    assertThat(screen.front().get()).isTrue();
    assertThat(shown()).isInstanceOf(StartPage.class);
  }

  @Test
  void whatIsInTheWayIsSaidWhereTheSeasonWouldBe() throws Exception {
    SwingUtilities.invokeAndWait(() -> screen.open(folder.resolve("nowhere")));
    assertThat(screen.front().get()).isTrue();
    assertThat(shown()).isInstanceOf(FaultPanel.class);
    assertThat(((FaultPanel) shown()).text()).contains("nowhere", "isn't a folder");
  }

  @Test
  void aLoggerFileBeginsANewSeason() throws Exception {
    Path file = LoggerFile.in(folder);
    SwingUtilities.invokeAndWait(() -> screen.take(List.of(file)));
    assertThat(shown()).isInstanceOf(NewSeasonPage.class);
  }

  @Test
  void aFolderWithoutAnythingIsRefusedInWords() throws Exception {
    SwingUtilities.invokeAndWait(() -> screen.take(List.of(folder)));
    assertThat(((FaultPanel) shown()).text()).contains("no file matches");
  }

  private DeskAction action(String name) {
    return screen.actions().stream()
        .filter(action -> action.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private Component shown() {
    return Arrays.stream(screen.getComponents())
        .filter(Component::isVisible)
        .findFirst()
        .orElseThrow();
  }
}
