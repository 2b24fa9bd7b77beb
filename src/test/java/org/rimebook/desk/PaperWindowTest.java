package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Terminal;

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
}
