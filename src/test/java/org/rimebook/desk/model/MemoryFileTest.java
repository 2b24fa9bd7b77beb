package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

class MemoryFileTest {

  @TempDir Path folder;
  private Path file;
  private final List<Notice> told = new ArrayList<>();

  @BeforeEach
  void inAFolderThatIsNotThereYet() {
    file = folder.resolve("state").resolve(MemoryFile.NAME);
  }

  @Test
  void whatIsRememberedIsThereAtTheNextStart() {
    WindowState window =
        new WindowState(
            Optional.of(new WindowState.Place(-8, 20, 1280, 800)), true, "as the system", 150);
    RecentSeason season = recent("Ålesund ridge", "2025-01-02T03:04:05Z");
    Memory memory = memory();
    memory.window(window);
    memory.recent(season);
    memory.view(season.folder(), view(1000));
    Memory next = memory();
    assertThat(next.window()).isEqualTo(window);
    assertThat(next.recent()).containsExactly(season);
    assertThat(next.view(season.folder())).contains(view(1000));
    assertThat(told).isEmpty();
  }

  @Test
  void theFileIsSortedTextWithoutATime() throws IOException {
    Memory memory = memory();
    memory.recent(recent("Ålesund ridge", "2025-01-02T03:04:05Z"));
    List<String> lines = Files.readAllLines(file);
    assertThat(lines).isSorted().noneMatch(line -> line.startsWith("#"));
    assertThat(lines).anyMatch(line -> line.endsWith("name=Ålesund ridge"));
    assertThat(file.getParent()).isDirectoryContaining(p -> p.equals(file));
    assertThat(Files.list(file.getParent())).containsExactly(file);
  }

  @Test
  void twoSeasonsKeepTheirOwnViews() {
    Memory memory = memory();
    memory.view(folder.resolve("a"), view(1000));
    memory.view(folder.resolve("ab"), view(5000));
    memory.forget(folder.resolve("c"));
    assertThat(memory().view(folder.resolve("a"))).contains(view(1000));
    assertThat(memory().view(folder.resolve("ab"))).contains(view(5000));
    assertThat(memory().view(folder.resolve("b"))).isEmpty();
  }

  @Test
  void theLatestSeasonComesFirstAndAForgottenOneIsGone() {
    Memory memory = memory();
    memory.recent(recent("older", "2025-01-02T00:00:00Z"));
    memory.recent(recent("newer", "2025-01-03T00:00:00Z"));
    memory.recent(recent("oldest", "2025-01-01T00:00:00Z"));
    memory.forget(folder.resolve("older"));
    assertThat(memory().recent()).extracting(RecentSeason::name).containsExactly("newer", "oldest");
  }

  @Test
  void aDamagedFileIsToldKeptAsideAndBegunAnew() throws IOException {
    Files.createDirectories(file.getParent());
    byte[] damaged = {'f', 'o', 'r', (byte) 0xff, (byte) 0xfe, '\n'};
    Files.write(file, damaged);
    Memory memory = memory();
    assertThat(memory.recent()).isEmpty();
    assertThat(memory.window()).isEqualTo(WindowState.UNKNOWN);
    assertThat(told).singleElement().extracting(Notice::words).asString().contains("can't be read");
    assertThat(Files.readAllBytes(file.resolveSibling(MemoryFile.NAME + ".damaged")))
        .isEqualTo(damaged);
    memory.recent(recent("a", "2025-01-03T00:00:00Z"));
    assertThat(memory().recent()).hasSize(1);
  }

  @Test
  void aDamagedValueCostsThatValueOnly() throws IOException {
    Memory memory = memory();
    memory.view(folder.resolve("a"), view(1000));
    String text = Files.readString(file);
    Files.writeString(
        file, text.replace("visible=", "visible=yesterday ").replace("daily", "weekly"));
    ViewState read = memory().view(folder.resolve("a")).orElseThrow();
    assertThat(read.visible()).isEmpty();
    assertThat(read.catchForm()).isEqualTo(CatchForm.ACCUMULATED);
    assertThat(read.notebookFilter()).isEqualTo(view(1000).notebookFilter());
    assertThat(told).singleElement().extracting(Notice::words).asString().contains("visible");
  }

  @Test
  void aFolderThatCannotBeWrittenIsToldOnceAndStopsNothing() throws IOException {
    Files.writeString(folder.resolve("state"), "a file where the folder should be");
    Memory memory = memory();
    told.clear();
    memory.recent(recent("a", "2025-01-03T00:00:00Z"));
    memory.recent(recent("b", "2025-01-04T00:00:00Z"));
    assertThat(memory.recent()).hasSize(2);
    assertThat(told)
        .singleElement()
        .extracting(Notice::words)
        .asString()
        .contains("can't be written");
  }

  @Test
  void changesMeanwhileAreWrittenAsOne() throws IOException {
    Deque<Runnable> waiting = new ArrayDeque<>();
    Memory memory = new MemoryFile(file, waiting::add, told::add);
    memory.view(folder.resolve("a"), view(1000));
    memory.view(folder.resolve("a"), view(2000));
    assertThat(file).doesNotExist();
    assertThat(waiting).hasSize(1);
    waiting.remove().run();
    assertThat(memory().view(folder.resolve("a"))).contains(view(2000));
    memory.view(folder.resolve("a"), view(3000));
    memory.flush();
    assertThat(memory().view(folder.resolve("a"))).contains(view(3000));
  }

  private Memory memory() {
    return new MemoryFile(file, Runnable::run, told::add);
  }

  private RecentSeason recent(String name, String opened) {
    return new RecentSeason(
        folder.resolve(name), name, Instant.parse(opened), Optional.of(new BigDecimal("363.20")));
  }

  private static ViewState view(long fromMs) {
    return new ViewState(
        Optional.of(new Interval(fromMs, fromMs + 3_600_000)),
        List.of(new StripSetting(StripSetting.Kind.CATCH, false, 2.5, false)),
        CatchForm.DAILY,
        Drawer.TOTALS,
        Resolution.HUNDREDTH,
        Selection.NONE.only(new Interval(fromMs, fromMs + 60_000)),
        Map.of("notebook", 0.75),
        "kind: remark = \"ö\"\nand more",
        FindingOrder.TIME);
  }
}
