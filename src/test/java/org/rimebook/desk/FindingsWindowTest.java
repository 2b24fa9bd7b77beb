package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.FindingsLeft;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Season;

/** Findings walked and decided on before the real window. */
class FindingsWindowTest {

  @TempDir private Path folder;

  @Test
  void findingsAreWalkedAcceptedDismissedAndBroughtBackByKeys() throws IOException {
    Path season = Sitting.copy("hard-winter", folder);
    int before = notebook(season).size();
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      List<Finding> found = left(sitting).open();
      assertThat(found).hasSizeGreaterThan(2);
      sitting.person.press("N");
      sitting.person.press("N");
      assertThat(left(sitting).reviewed()).contains(found.get(1));
      sitting.person.press("P");
      assertThat(left(sitting).reviewed()).contains(found.get(0));
      sitting.waitForForeseen();
      sitting.picture("finding");
      assertThat(Texts.in(sitting.frame())).contains(found.get(0).reason(), "Proposed: ");
      accept(sitting);
      assertThat(notebook(season)).hasSizeGreaterThan(before);
      assertThat(left(sitting).open()).doesNotContain(found.get(0));
      assertThat(left(sitting).reviewed()).contains(found.get(1));
      dismiss(sitting, season, found.get(1));
      int decided = notebook(season).size();
      sitting.person.press("control Z");
      assertThat(notebook(season)).hasSizeGreaterThan(decided);
      assertThat(left(sitting).reviewed()).contains(found.get(1));
      assertThat(left(sitting).open()).contains(found.get(1)).doesNotContain(found.get(0));
      sitting.person.press("ESCAPE");
      assertThat(left(sitting).reviewed()).isEmpty();
      sitting.waitUntilSettled();
      assertThat(left(sitting).open()).contains(found.get(1)).doesNotContain(found.get(0));
    }
  }

  private static void accept(Sitting sitting) {
    sitting.person.press("A");
    sitting.picture("finding-initials");
    sitting.person.type("kh");
    sitting.person.press("ENTER");
  }

  private static void dismiss(Sitting sitting, Path season, Finding finding) throws IOException {
    sitting.person.press("X");
    sitting.person.type("logger exchanged");
    sitting.picture("finding-dismissal");
    sitting.person.press("ENTER");
    Entry last = last(sitting);
    assertThat(last)
        .isInstanceOfSatisfying(
            Entry.Dismissal.class,
            no -> {
              assertThat(no.finding()).isEqualTo(finding.id());
              assertThat(no.header().note()).isEqualTo("logger exchanged");
              assertThat(no.header().by()).isEqualTo("kh");
            });
    assertThat(String.join("\n", notebook(season))).contains("logger exchanged");
    assertThat(left(sitting).open()).doesNotContain(finding);
  }

  private static Entry last(Sitting sitting) {
    List<Entry> entries =
        Person.see(
            () -> sitting.workspace().opened().get().orElseThrow().season().notebook().inForce());
    return entries.get(entries.size() - 1);
  }

  private static FindingsLeft left(Sitting sitting) {
    return Person.see(() -> sitting.workspace().findings().get());
  }

  private static List<String> notebook(Path season) throws IOException {
    return Files.readAllLines(season.resolve(Season.NOTEBOOK_FILE));
  }

  @Test
  void aFindingInTheLaneIsChosenByAClickAndOpenedByTwo() throws IOException {
    Path season = Sitting.copy("hard-winter", folder);
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      Optional<Finding> first = left(sitting).open().stream().findFirst();
      sitting.person.press("N");
      sitting.person.press("ESCAPE");
      long shown = Person.see(() -> sitting.workspace().view().visible().get().lengthMs());
      Person.see(
          () -> {
            sitting.workspace().view().zoom(first.get().span().fromMs(), 2);
            return null;
          });
      int x =
          Person.see(
              () ->
                  sitting
                      .stack()
                      .xAt(first.get().span().fromMs() + first.get().span().lengthMs() / 2));
      sitting.person.click(sitting.lane(), x, sitting.laneRow(first.get()));
      assertThat(left(sitting).reviewed()).isEqualTo(first);
      sitting.person.press("ESCAPE");
      sitting.person.doubleClick(sitting.lane(), x, sitting.laneRow(first.get()));
      assertThat(left(sitting).reviewed()).isEqualTo(first);
      assertThat(Person.<Long>see(() -> sitting.workspace().view().visible().get().lengthMs()))
          .isEqualTo(shown);
    }
  }
}
