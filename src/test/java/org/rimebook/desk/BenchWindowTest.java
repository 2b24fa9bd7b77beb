package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.StringSelection;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.desk.model.bench.BenchTask;
import org.rimebook.season.Season;

/** The bench before the real window. */
class BenchWindowTest {

  private static final String WEIGHTS =
      "kg\tHz\n0\t1050,1\n2\t1521,4\n4\t1876,5\n6\t2173,2\n8\t2434,2\n";

  @TempDir private Path folder;

  @AfterEach
  void everythingAtItsSizeAgain() {
    Person.see(
        () -> {
          UIScale.setZoomFactor(1);
          return null;
        });
  }

  private static Component named(Sitting sitting, String name) {
    return Person.see(() -> Texts.named(sitting.frame(), name));
  }

  private static void paste(Sitting sitting, String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
    sitting.person.press("control V");
  }

  private static void fill(Sitting sitting, String name, String text) {
    Component field = named(sitting, name);
    Person.see(field::requestFocusInWindow);
    sitting.person.waitFor("the focus at " + name, field::isFocusOwner);
    sitting.person.press("control A");
    paste(sitting, text);
    sitting.person.waitFor(
        text + " in " + name, () -> ((JTextComponent) field).getText().equals(text));
  }

  private static void choose(Sitting sitting, String name, int item) {
    Person.see(
        () -> {
          ((JComboBox<?>) Texts.named(sitting.frame(), name)).setSelectedIndex(item);
          return null;
        });
  }

  private static void task(Sitting sitting, int number) {
    Component list = named(sitting, "Tasks of the bench");
    int each = Person.<Integer>see(list::getHeight) / BenchTask.values().length;
    sitting.person.click(list, 30, number * each + each / 2);
  }

  private static void waitForPaper(Sitting sitting, String words) {
    sitting.person.waitFor(
        "a paper that is current",
        () ->
            Texts.button(sitting.frame(), "Save PDF…").isEnabled()
                && Texts.shows(sitting.frame(), "Page 1 of ")
                && Texts.in(sitting.frame()).contains(words));
  }

  private static void press(Sitting sitting, String button) {
    sitting.person.waitFor(
        button + " to be possible", () -> Texts.button(sitting.frame(), button).isEnabled());
    AbstractButton found = Person.see(() -> Texts.button(sitting.frame(), button));
    sitting.person.click(found);
  }

  private static List<String> notebook(Path season) throws IOException {
    return Files.readAllLines(season.resolve(Season.NOTEBOOK_FILE));
  }

  private static Optional<Window> dialog(Sitting sitting, String words) {
    return Arrays.stream(sitting.frame().getOwnedWindows())
        .filter(Window::isShowing)
        .filter(window -> Texts.in(window).contains(words))
        .findFirst();
  }

  @Test
  void theBenchOpensInPlaceOfTheStripsAndClosesAgain() throws IOException {
    Path season = Sitting.copy("quiet-valley", folder);
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      sitting.person.press("control B");
      assertThat(Person.<Boolean>see(() -> sitting.stack().isShowing())).isFalse();
      sitting.person.waitFor(
          "what is missing", () -> Texts.in(sitting.frame()).contains("Enter at least one weight"));
      assertThat(Texts.in(sitting.frame())).contains("Tallis Flat", "Save PDF…");
      sitting.person.press("B");
      assertThat(Person.<Object>see(() -> sitting.workspace().draft().get()))
          .isEqualTo(Optional.empty());
      sitting.person.press("ESCAPE");
      assertThat(Person.<Boolean>see(() -> sitting.stack().isShowing())).isTrue();
      sitting.person.press("control B");
      sitting.person.press("control B");
      assertThat(Person.<Boolean>see(() -> sitting.stack().isShowing())).isTrue();
      sitting.person.press("control B");
      sitting.person.press("control T");
      assertThat(Person.<Boolean>see(() -> sitting.stack().isShowing())).isTrue();
    }
  }

  @Test
  void weightsGiveAPaperAndTheirFitIsStoredInTheSheet() throws IOException {
    Path season = Sitting.copy("quiet-valley", folder);
    int before = notebook(season).size();
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      sitting.person.press("control B");
      sitting.person.click(named(sitting, "Check weights and frequencies"), 80, 10);
      paste(sitting, WEIGHTS);
      waitForPaper(sitting, "To store it, enter from when it holds.");
      sitting.picture("bench-weights");
      fill(sitting, "Holds from (UTC-08:00)", "2024-06-01 12:00");
      fill(sitting, "Your initials", "kh");
      press(sitting, "Store…");
      sitting.person.waitFor("the question", () -> dialog(sitting, "8.418").isPresent());
      sitting.picture("bench-question");
      Window asked = Person.see(() -> dialog(sitting, "8.418").orElseThrow());
      sitting.person.click(Person.see(() -> Texts.button(asked, "Store")));
      sitting.person.waitFor(
          "the notice", () -> Texts.in(sitting.frame()).contains("Stored in station.json"));
      sitting.person.waitFor(
          "the bench",
          () -> Texts.in(sitting.frame()).contains("The station sheet has this calibration"));
      sitting.waitUntilSettled();
      sitting.picture("bench-stored");
    }
    assertThat(Files.readString(season.resolve(Season.STATION_FILE)))
        .contains("2024-06-01T12:00:00-08:00");
    assertThat(notebook(season)).hasSize(before + 1);
    assertThat(notebook(season).get(before)).contains("Wire north has a new calibration", "kh");
  }

  @Test
  void anInstallationAndAVisitAreStoredAsEntriesThatCanBeTakenBack() throws IOException {
    Path season = Sitting.copy("hard-winter", folder);
    int before = notebook(season).size();
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      sitting.person.press("control B");
      task(sitting, 4);
      fill(sitting, "From (UTC-07:00)", "2024-10-15 09:30");
      fill(sitting, "To (UTC-07:00)", "2024-10-15 09:10");
      sitting.person.waitFor(
          "what is wrong", () -> Texts.in(sitting.frame()).contains("It comes after \"From\""));
      fill(sitting, "To (UTC-07:00)", "2024-10-15 10:30");
      fill(sitting, "Depth expected (mm)", "140");
      waitForPaper(sitting, "To store it, enter your initials");
      fill(sitting, "Your initials", "kh");
      press(sitting, "Store");
      sitting.person.waitFor(
          "the remark", () -> Texts.in(sitting.frame()).contains("The notebook has this outcome"));
      assertThat(notebook(season)).hasSize(before + 1);
      assertThat(notebook(season).get(before))
          .contains("remark", "Depth of wire creek", "140.80 mm", "2024-10-15T09:30:00-07:00");
      sitting.picture("bench-remark");
      visit(sitting);
      assertThat(notebook(season)).hasSize(before + 2);
      assertThat(notebook(season).get(before + 1))
          .contains("service-visit", "emptied", "\"antifreeze_l\": 4.5", "312.4 mm", "\"kh\"");
      sitting.picture("bench-visit");
      sitting.person.press("control Z");
      assertThat(notebook(season)).hasSize(before + 3);
      assertThat(notebook(season).get(before + 2)).contains("withdrawal");
      waitForPaper(sitting, "Undone: service visit");
    }
  }

  private static void visit(Sitting sitting) {
    task(sitting, 5);
    fill(sitting, "Arrived (UTC-07:00)", "2025-01-22 11:00");
    fill(sitting, "Left (UTC-07:00)", "2025-01-22 12:00");
    waitForPaper(sitting, "which overlaps this one");
    fill(sitting, "Arrived (UTC-07:00)", "2025-02-11 11:00");
    fill(sitting, "Left (UTC-07:00)", "2025-02-11 12:00");
    sitting.person.click(Person.see(() -> Texts.button(sitting.frame(), "emptied")));
    fill(sitting, "Antifreeze (L)", "4,5");
    fill(sitting, "Level before (mm)", "312.4");
    press(sitting, "Store");
    sitting.person.waitFor(
        "the visit", () -> Texts.in(sitting.frame()).contains("which overlaps this one"));
  }

  @ParameterizedTest
  @CsvSource({"1280, 800, 1", "1920, 1080, 1", "1280, 800, 2"})
  void everyTaskAtEverySize(int width, int height, int scale) throws IOException {
    Path season = Sitting.copy("hard-winter", folder);
    String name = "-" + width + "x" + height + (scale == 2 ? "-200" : "");
    try (Sitting sitting =
        Sitting.at(Optional.of(season), folder.resolve("memory"), width, height)) {
      for (int step = 0; step < 4 * (scale - 1); step++) {
        sitting.person.press("control EQUALS");
      }
      sitting.waitUntilSettled();
      pictures(sitting, name);
    }
    assertThat(Path.of("target", "screens", "bench-next-visit" + name + ".png")).exists();
  }

  private static void pictures(Sitting sitting, String name) {
    sitting.person.press("control B");
    sitting.picture("bench-calibration" + name);
    task(sitting, 1);
    waitForPaper(sitting, "has it so");
    sitting.picture("bench-temperature" + name);
    task(sitting, 2);
    choose(sitting, "Antifreeze", 1);
    waitForPaper(sitting, "gloves");
    sitting.picture("bench-charge" + name);
    task(sitting, 3);
    fill(sitting, "Coldest air expected (°C)", "-25");
    waitForPaper(sitting, "go alone");
    sitting.picture("bench-next-visit" + name);
    task(sitting, 4);
    fill(sitting, "From (UTC-07:00)", "2024-10-15 09:30");
    fill(sitting, "To (UTC-07:00)", "2024-10-15 10:30");
    waitForPaper(sitting, "initials");
    sitting.picture("bench-installation" + name);
    task(sitting, 5);
    fill(sitting, "Antifreeze (L)", "a jug");
    sitting.person.press("TAB");
    sitting.person.waitFor(
        "what is missing", () -> Texts.in(sitting.frame()).contains(": Enter it, for example"));
    sitting.picture("bench-visit-fault" + name);
  }

  @Test
  void theBenchInTheDark() throws IOException {
    Path memory = Files.createDirectories(folder.resolve("memory"));
    Files.writeString(
        memory.resolve("desk.properties"), "format=rimebook-memory/1\nwindow.theme=dark\n");
    Path season = Sitting.copy("hard-winter", folder);
    try (Sitting sitting = Sitting.at(Optional.of(season), memory, 1280, 800)) {
      sitting.waitUntilSettled();
      pictures(sitting, "-dark");
      if (PrinterJob.getPrinterJob().getPrintService() == null) {
        task(sitting, 4);
        waitForPaper(sitting, "initials");
        press(sitting, "Print…");
        sitting.person.waitFor(
            "that there is no printer",
            () -> Texts.in(sitting.frame()).contains("No printer is set up on this computer"));
      }
    }
  }
}
