package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.desk.model.Neighbour;
import org.rimebook.fixture.Terminal;
import org.rimebook.station.InputException;

/** Every state of the window, written to target/screens to be looked at. */
class ScreensTest {

  @TempDir private Path folder;

  @AfterEach
  void everythingAtItsSizeAgain() {
    Person.see(
        () -> {
          UIScale.setZoomFactor(1);
          return null;
        });
  }

  @Test
  void theStartPageAndAFaultOnOpening() {
    Path nothing = folder.resolve("nothing-here");
    try (Sitting sitting = Sitting.at(Optional.of(nothing), folder.resolve("m"), 1280, 800)) {
      sitting.person.waitFor(
          "the fault", () -> Texts.in(sitting.frame()).contains("isn't a folder"));
      sitting.picture("fault");
      sitting.person.press("control shift O");
      sitting.person.waitFor(
          "the start page", () -> Texts.in(sitting.frame()).contains("Quiet valley"));
      sitting.picture("start");
    }
  }

  @ParameterizedTest
  @CsvSource({"1280, 800, 1", "1920, 1080, 1", "1920, 1080, 2", "1280, 800, 2"})
  void aSeasonWithWhatSlidesInUnderIt(int width, int height, int scale) throws IOException {
    Path season = Sitting.copy("hard-winter", folder);
    String name = "-" + width + "x" + height + (scale == 2 ? "-200" : "");
    try (Sitting sitting =
        Sitting.at(Optional.of(season), folder.resolve("memory"), width, height)) {
      for (int step = 0; step < 4 * (scale - 1); step++) {
        sitting.person.press("control EQUALS");
      }
      sitting.waitUntilSettled();
      sitting.picture("season" + name);
      sitting.person.press("control T");
      sitting.picture("totals" + name);
      why(sitting, name);
      sitting.person.press("control D");
      scatters(sitting, name, scale == 1);
      sitting.person.press("control D");
      marking(sitting, name);
      finding(sitting, name);
      sitting.person.press("F1");
      sitting.person.picture("keys" + name);
      sitting.person.press("ESCAPE");
    }
    assertThat(Path.of("target", "screens", "season" + name + ".png")).exists();
  }

  private static void why(Sitting sitting, String name) {
    Person.see(
        () -> {
          sitting
              .workspace()
              .asked()
              .set(
                  sitting.workspace().computed().get().orElseThrow().totals().daily().stream()
                      .filter(day -> day.catchUnits().orElse(0) > 100)
                      .findFirst()
                      .map(day -> day.interval()));
          return null;
        });
    sitting.person.waitFor(
        "the explanation", () -> Texts.in(sitting.frame()).contains("uncertainty"));
    sitting.picture("why" + name);
    sitting.person.press("shift W");
  }

  /** All views beside each other, or one by one. */
  private static void scatters(Sitting sitting, String name, boolean besideEachOther) {
    sitting.person.waitFor(
        "the readings against depth",
        () -> Texts.in(sitting.frame()).contains("furthest from that"));
    sitting.picture("against" + name);
    if (!besideEachOther) {
      sitting.person.click(Texts.button(sitting.frame(), "Departure by hour"));
    }
    sitting.person.waitFor(
        "the departures by hour", () -> Texts.in(sitting.frame()).contains("dry days"));
    sitting.picture("by-hour" + name);
  }

  private static void finding(Sitting sitting, String name) {
    sitting.person.press("N");
    sitting.waitForForeseen();
    sitting.picture("finding" + name);
    sitting.person.press("M");
    sitting.picture("finding-changed" + name);
    sitting.person.press("ESCAPE");
    sitting.person.press("ESCAPE");
    sitting.waitUntilSettled();
  }

  private static void marking(Sitting sitting, String name) {
    Rectangle plots = Person.see(sitting.stack()::plots);
    Point middle = new Point((int) plots.getCenterX(), (int) plots.getCenterY());
    sitting.person.wheel(sitting.stack(), middle, -6);
    sitting.person.drag(sitting.stack(), middle, new Point(middle.x + plots.width / 5, middle.y));
    sitting.person.press("V");
    sitting.waitForForeseen();
    sitting.picture("visit" + name);
    sitting.person.press("ESCAPE");
    sitting.waitUntilSettled();
  }

  @Test
  void aSeasonInTheDark() throws IOException {
    Path memory = Files.createDirectories(folder.resolve("memory"));
    Files.writeString(
        memory.resolve("desk.properties"), "format=rimebook-memory/1\nwindow.theme=dark\n");
    Path season = Sitting.copy("windy-ridge", folder);
    try (Sitting sitting = Sitting.at(Optional.of(season), memory, 1280, 800)) {
      sitting.waitUntilSettled();
      sitting.person.press("control T");
      sitting.picture("dark");
      sitting.person.press("control T");
      Path tables = folder.resolve("tables");
      Terminal.run("totals", season, "--out", tables, "--no-report");
      Neighbour neighbour = read(tables.resolve("daily.csv"));
      Person.see(
          () -> {
            sitting.workspace().neighbour().set(Optional.of(neighbour));
            return null;
          });
      sitting.picture("neighbour");
    }
  }

  private static Neighbour read(Path table) throws IOException {
    try {
      return Neighbour.read(table);
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }
}
