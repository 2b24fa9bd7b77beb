package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JScrollPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.desk.model.Neighbour;
import org.rimebook.fixture.Terminal;
import org.rimebook.station.InputException;

/** The report's preview and a figure of the view in sight, before the real window. */
class PaperWindowTest {

  @TempDir private Path folder;

  private static Optional<Window> dialog(Sitting sitting, String words) {
    return Arrays.stream(sitting.frame().getOwnedWindows())
        .filter(Window::isShowing)
        .filter(window -> Texts.in(window).contains(words))
        .findFirst();
  }

  private static void waitFor(Sitting sitting, String words) {
    sitting.person.waitFor(words, () -> dialog(sitting, words).isPresent());
  }

  @Test
  void theReportIsShownPageByPage() throws IOException {
    Path season = Sitting.copy("quiet-valley", folder);
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      sitting.person.press("control P");
      waitFor(sitting, "page 1 of ");
      sitting.picture("report");
      sitting.person.press("PAGE_DOWN");
      waitFor(sitting, "page 2 of ");
      sitting.picture("report-second-page");
      sitting.person.press("PAGE_UP");
      waitFor(sitting, "page 1 of ");
      sitting.person.press("ESCAPE");
      sitting.person.waitFor("the end", () -> dialog(sitting, "page 1 of ").isEmpty());
    }
  }

  @Test
  void theViewInSightIsSavedAsAFigure() throws IOException {
    Path season = Sitting.copy("quiet-valley", folder);
    Path file = folder.resolve("a.svg");
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      sitting.person.press("control shift E");
      waitFor(sitting, "frequency, depth, catch");
      sitting.picture("figure");
      sitting.person.press("control A");
      sitting.person.type(file.toString());
      sitting.person.press("ENTER");
      sitting.person.waitFor("the file", () -> Files.exists(file));
      sitting.person.waitFor("the end", () -> dialog(sitting, "frequency, depth").isEmpty());
    }
    Path line = folder.resolve("line.svg");
    Terminal run =
        Terminal.run(
            "figure",
            season,
            "--out",
            line,
            "--show",
            "frequency,depth,catch,temperature,wind,supply");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(Files.readString(file)).contains("Supply voltage (V)").startsWith("<?xml");
  }

  /** The page is drawn as wide as there is room for, so that no line of it is cut off. */
  @Test
  void aPageFitsTheDialogAtTwiceTheSize() throws IOException {
    Path season = Sitting.copy("quiet-valley", folder);
    try (Sitting sitting = Sitting.at(Optional.of(season), folder.resolve("memory"), 1280, 800)) {
      for (int step = 0; step < 4; step++) {
        sitting.person.press("control EQUALS");
      }
      sitting.waitUntilSettled();
      sitting.person.press("control P");
      waitFor(sitting, "page 1 of ");
      sitting.picture("report-1280-200");
      Window dialog = dialog(sitting, "page 1 of ").orElseThrow();
      assertThat(Person.see(() -> horizontalBars(dialog))).isZero();
      sitting.person.press("ESCAPE");
      sitting.person.waitFor("the end", () -> dialog(sitting, "page 1 of ").isEmpty());
    } finally {
      Person.see(
          () -> {
            UIScale.setZoomFactor(1);
            return null;
          });
    }
  }

  private static long horizontalBars(Container around) {
    long here =
        around instanceof JScrollPane pane && pane.getHorizontalScrollBar().isVisible() ? 1 : 0;
    for (Component part : around.getComponents()) {
      here += part instanceof Container inner ? horizontalBars(inner) : 0;
    }
    return here;
  }

  @ParameterizedTest
  @CsvSource({"1280, 800, 2, light", "1920, 1080, 1, dark", "1280, 800, 1, light"})
  void aNeighboursStripInSightIsInTheFigureToo(int width, int height, int scale, String theme)
      throws IOException {
    Path memory = Files.createDirectories(folder.resolve("memory"));
    Files.writeString(
        memory.resolve("desk.properties"),
        "format=rimebook-memory/1\nwindow.theme=" + theme + "\n");
    Path season = Sitting.copy("quiet-valley", folder);
    Path table = folder.resolve("other.csv");
    Files.writeString(
        table, "start,end,catch_mm\n2024-01-10T00:00:00-08:00,2024-01-11T00:00:00-08:00,12.5\n");
    Path file = folder.resolve("a.svg");
    String name = "-" + width + (scale == 2 ? "-200" : "") + "-" + theme;
    try (Sitting sitting = Sitting.at(Optional.of(season), memory, width, height)) {
      for (int step = 0; step < 4 * (scale - 1); step++) {
        sitting.person.press("control EQUALS");
      }
      sitting.waitUntilSettled();
      Neighbour neighbour = read(table);
      Person.see(
          () -> {
            sitting.workspace().neighbour().set(Optional.of(neighbour));
            return null;
          });
      sitting.picture("strips" + name);
      sitting.person.press("control shift E");
      waitFor(sitting, "neighbour");
      sitting.picture("figure" + name);
      sitting.person.press("control A");
      sitting.person.type(file.toString());
      sitting.person.press("ENTER");
      sitting.person.waitFor("the file", () -> Files.exists(file));
    } finally {
      Person.see(
          () -> {
            UIScale.setZoomFactor(1);
            return null;
          });
    }
    assertThat(Files.readString(file)).contains("Daily catch, other.csv (mm)", "not known");
  }

  private static Neighbour read(Path table) throws IOException {
    try {
      return Neighbour.read(table);
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }
}
