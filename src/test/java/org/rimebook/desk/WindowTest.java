package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.Drawer;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;

/** A sitting before the real window, driven by mouse and keys. */
class WindowTest {

  @TempDir private Path folder;

  @Test
  void aSittingFromOpeningToReopeningKeepsEveryEntryAndTheView() throws IOException {
    Path season = Sitting.copy("hard-winter", folder);
    Path memory = folder.resolve("memory");
    List<String> before = Files.readAllLines(season.resolve(Season.NOTEBOOK_FILE));
    Interval left;
    try (Sitting sitting = Sitting.with(season, memory)) {
      zoomIn(sitting);
      mark(sitting);
      assertThat(notebook(season))
          .hasSize(before.size() + 1)
          .startsWith(before.toArray(String[]::new));
      dragAnEdge(sitting);
      assertThat(notebook(season)).hasSize(before.size() + 3);
      undoAndRedo(sitting);
      assertThat(notebook(season)).startsWith(before.toArray(String[]::new));
      sitting.person.press("control T");
      assertThat(sitting.workspace().drawer().get()).isEqualTo(Drawer.TOTALS);
      left = Person.see(() -> sitting.workspace().view().visible().get());
      export(sitting, folder.resolve("window"));
    }
    Path line = folder.resolve("line");
    assertThat(Terminal.run("totals", season, "--out", line, "--no-report").code()).isZero();
    assertThat(Copies.bytes(folder.resolve("window")))
        .isEqualTo(Copies.bytes(line))
        .containsKeys("hourly.csv", "daily.csv", "season.json", "datapackage.json");
    try (Sitting again = Sitting.with(season, memory)) {
      assertThat(Person.<Interval>see(() -> again.workspace().view().visible().get()))
          .isEqualTo(left);
      assertThat(again.workspace().drawer().get()).isEqualTo(Drawer.TOTALS);
    }
    assertThat(Copies.bytes(season.resolve("records")))
        .isEqualTo(Copies.bytes(Path.of("sample-sets/hard-winter/records")));
  }

  private static void zoomIn(Sitting sitting) {
    long before = visible(sitting).lengthMs();
    Rectangle plots = Person.see(sitting.stack()::plots);
    sitting.person.wheel(sitting.stack(), new Point((int) plots.getCenterX(), plots.y + 40), -8);
    assertThat(visible(sitting).lengthMs()).isLessThan(before / 3);
  }

  private static void mark(Sitting sitting) {
    Rectangle plots = Person.see(sitting.stack()::plots);
    int y = plots.y + plots.height / 2;
    sitting.person.drag(
        sitting.stack(),
        new Point(plots.x + plots.width / 4, y),
        new Point(plots.x + plots.width / 2, y));
    sitting.picture("selected");
    sitting.person.press("B");
    sitting.waitForForeseen();
    sitting.picture("marking");
    sitting.person.press("TAB");
    sitting.person.type("rime on the wires");
    sitting.person.press("TAB");
    sitting.person.type("kh");
    sitting.person.press("ENTER");
    sitting.waitUntilSettled();
  }

  private static void dragAnEdge(Sitting sitting) {
    Entry.Spanning entry = lastEntry(sitting);
    OptionalLong caught = caught(sitting);
    int x = Person.see(() -> sitting.stack().xAt(entry.interval().toMs()));
    Rectangle plots = Person.see(sitting.stack()::plots);
    int y = plots.y + plots.height / 2;
    sitting.person.dragHeld(sitting.stack(), new Point(x, y), new Point(x + 60, y));
    sitting.waitForForeseen();
    sitting.picture("edge");
    sitting.person.release();
    sitting.waitUntilSettled();
    assertThat(lastEntry(sitting).interval().toMs()).isGreaterThan(entry.interval().toMs());
    assertThat(caught).isPresent();
  }

  private static void undoAndRedo(Sitting sitting) {
    Interval dragged = lastEntry(sitting).interval();
    sitting.person.press("control Z");
    assertThat(lastEntry(sitting).interval().toMs()).isLessThan(dragged.toMs());
    sitting.person.press("control shift Z");
    assertThat(lastEntry(sitting).interval()).isEqualTo(dragged);
    sitting.waitUntilSettled();
  }

  private static void export(Sitting sitting, Path into) {
    sitting.person.press("control E");
    sitting.person.waitFor(
        "the dialog",
        () ->
            Arrays.stream(sitting.frame().getOwnedWindows())
                .anyMatch(window -> Texts.in(window).contains("season.json")));
    sitting.picture("export");
    sitting.person.press("control A");
    sitting.person.type(into.toString());
    sitting.person.press("ENTER");
    sitting.person.waitFor("the tables", () -> Files.exists(into.resolve("season.json")));
  }

  private static Entry.Spanning lastEntry(Sitting sitting) {
    List<Entry> entries =
        Person.see(
            () -> sitting.workspace().opened().get().orElseThrow().season().notebook().inForce());
    return (Entry.Spanning) entries.get(entries.size() - 1);
  }

  private static OptionalLong caught(Sitting sitting) {
    return Person.see(
        () -> sitting.workspace().computed().get().orElseThrow().totals().seasonUnits());
  }

  private static Interval visible(Sitting sitting) {
    return Person.see(() -> sitting.workspace().view().visible().get());
  }

  private static List<String> notebook(Path season) throws IOException {
    return Files.readAllLines(season.resolve(Season.NOTEBOOK_FILE));
  }
}
