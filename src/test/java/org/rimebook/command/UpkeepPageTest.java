package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.fixture.Terminal;
import org.rimebook.station.Words;
import org.rimebook.upkeep.Antifreeze;
import org.rimebook.upkeep.Poured;
import org.rimebook.upkeep.SheetTest;
import org.rimebook.upkeep.Water;

/** The worked examples of the page on looking after the gauge, as the program prints them. */
class UpkeepPageTest {

  private static final Path PAGE = Path.of("src", "site", "upkeep.md");
  private static final String FENCE = "```";
  private static final String LEFT_OUT = "…";

  /**
   * A command and what the page says it prints.
   *
   * @param command its words
   * @param lines its lines; one that is left out stands for any number
   */
  record Example(String command, List<String> lines) {

    @Override
    public String toString() {
      return command;
    }
  }

  static Stream<Example> examples() throws IOException {
    List<Example> examples = new ArrayList<>();
    List<String> block = new ArrayList<>();
    boolean inside = false;
    for (String line : Files.readAllLines(PAGE)) {
      if (line.equals(FENCE)) {
        if (inside) {
          examples.add(new Example(block.get(0), List.copyOf(block.subList(1, block.size()))));
        }
        block.clear();
        inside = !inside;
      } else if (inside) {
        block.add(line);
      }
    }
    return examples.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theProgramPrintsWhatThePageSays(Example example) {
    assertThat(example.command()).startsWith("$ rimebook ");
    Object[] words = example.command().substring("$ rimebook ".length()).split(" ");
    Terminal seen = Terminal.run(words);
    assertThat(seen.code()).isZero();
    List<String> printed = seen.out().lines().toList();
    int at = 0;
    boolean anywhere = false;
    for (String line : example.lines()) {
      if (line.equals(LEFT_OUT)) {
        anywhere = true;
        continue;
      }
      int found = printed.subList(at, printed.size()).indexOf(line);
      assertThat(found).as("%s%nin%n%s", line, seen.out()).isGreaterThanOrEqualTo(0);
      assertThat(anywhere || found == 0).as("nothing before %s", line).isTrue();
      at += found + 1;
      anywhere = false;
    }
  }

  @Test
  void thePageHasAnExampleOfEachCommand() throws IOException {
    assertThat(examples().map(Example::command))
        .extracting(command -> command.split(" ")[2])
        .contains("calibrate", "temperature", "charge", "next-visit", "installation");
  }

  @Test
  void whatIsWorkedByHandOnThePageIsWhatTheProgramWorksOut() throws IOException {
    String page = Files.readString(PAGE);
    double mostL = Antifreeze.PROPYLENE_GLYCOL.mostWaterL(2.40, -28).value().orElseThrow();
    assertThat(mostL).isCloseTo(2.82, within(0.005));
    assertThat(Water.depthMm(mostL - 0.76, 200)).isCloseTo(103, within(0.5));
    assertThat(page).contains("= 2.82 L of water, 2.06 L or 103 mm more");
    CalibrationCurve sheet = new CalibrationCurve(0.1709, 8.2e-5, 1050.1);
    assertThat(sheet.depthMm(1050.1 + 1384.1)).isCloseTo(393.63, within(0.005));
    assertThat(page).contains("0.01709 × 1384.1 + 8.2e-6 × 1384.1² = 39.363 cm");
    Poured poured = new Poured(Antifreeze.PROPYLENE_GLYCOL, 1, 2.40, 0.20, 0.83);
    assertThat(poured.massKg()).isCloseTo(2.652, within(0.0005));
    assertThat(page).contains("2.652 kg, which over 200 cm² stand 132.6 mm high");
  }

  @Test
  void thePageTestsASheetAsTheProgramDoes() throws IOException {
    assertThat(Files.readString(PAGE))
        .contains(
            Words.text("at the %.0f %% level", 100 * SheetTest.LEVEL),
            Words.text("differs by more than %.1f %%", SheetTest.MATTERS_PCT));
  }
}
