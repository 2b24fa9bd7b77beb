package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Terminal;

class PracticeCommandTest {

  @TempDir private Path folder;

  private static Terminal run(Object... more) {
    Object[] words = new Object[7 + more.length];
    Object[] first = {"practice", "--class", "coarse", "--seeds", "2", "--days", "15"};
    System.arraycopy(first, 0, words, 0, first.length);
    System.arraycopy(more, 0, words, first.length, more.length);
    return Terminal.run(words);
  }

  @Test
  void theTablesHoldTheClassAndEveryMethodWithItsTime() {
    Terminal run = run();
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out())
        .contains("| coarse ", "Rimebook |", "oracle |", "neutral aggregating filter |")
        .contains("three-wire pairwise |", "0.2 mm high-water mark |", "Gaussian smoothing")
        .contains("time s", "÷ filter", "hours 1u %", "seasons 1u")
        .doesNotContain("| calm ", "NaN");
    assertThat(run.err()).contains("1/2 coarse, plain, seed 1", "2/2 coarse, plain, seed 2");
  }

  @Test
  void thePageComesOutTheSameTwiceAndTellsHowItWasMade() throws IOException {
    Path page = folder.resolve("bench.md");
    assertThat(run("--variant", "heavy-tails", "--markdown", page).code()).isZero();
    String once = Files.readString(page);
    assertThat(run("--variant", "heavy-tails", "--markdown", page).code()).isZero();
    assertThat(Files.readString(page)).isEqualTo(once);
    assertThat(once)
        .contains("## heavy-tails: ", "| coarse ", "- **everything**: ", "--variant heavy-tails")
        .doesNotContain("time s");
  }

  @Test
  void aClassThatIsntThereIsWrongUseAndTheNamesAreShown() {
    Terminal run = Terminal.run("practice", "--class", "stormy");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.err()).contains("there is no class 'stormy'", "drifting-wire");
  }

  @Test
  void noSeedsAreWrongUse() {
    assertThat(Terminal.run("practice", "--seeds", "0").code()).isEqualTo(ExitCode.WRONG_USE);
  }

  @Test
  void aPageThatCantBeWrittenIsSaid() {
    Terminal run = run("--markdown", folder.resolve("absent").resolve("bench.md"));
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.err()).contains("absent", "--markdown");
  }
}
