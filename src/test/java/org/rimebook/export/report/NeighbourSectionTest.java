package org.rimebook.export.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Terminal;

/** The hard winter beside a neighbour that catches 1.25 times as much, half that from February. */
class NeighbourSectionTest {

  private static final Path SEASON = Path.of("sample-sets", "hard-winter");

  @TempDir private Path folder;

  private static Path table;

  @BeforeAll
  static void inventANeighbour(@TempDir Path invented) throws IOException {
    Path own = invented.resolve("own");
    Terminal.run("totals", SEASON, "--out", own, "--no-report", "--resolution", "0.01");
    List<String> lines = Files.readAllLines(own.resolve("daily.csv"));
    table = invented.resolve("daily.csv");
    Files.write(table, lines.stream().map(NeighbourSectionTest::neighbour).toList());
  }

  private static String neighbour(String line) {
    String[] cells = line.split(",", -1);
    if (cells[0].equals("start") || cells[2].isEmpty()) {
      return cells[0] + "," + cells[1] + "," + cells[2];
    }
    double times = cells[0].compareTo("2025-02") < 0 ? 1.25 : 0.625;
    return cells[0] + "," + cells[1] + "," + times * Double.parseDouble(cells[2]);
  }

  private PdfRead report(String... more) throws IOException {
    Path out = folder.resolve("report.pdf");
    Object[] words = new Object[more.length + 4];
    words[0] = "report";
    words[1] = SEASON;
    words[2] = "--out";
    words[3] = out;
    System.arraycopy(more, 0, words, 4, more.length);
    Terminal run = Terminal.run(words);
    assertThat(run.code()).as(run.err()).isZero();
    return new PdfRead(Files.readAllBytes(out));
  }

  @Test
  void ratioBreakMonthsAndCurveStandInTheReport() throws IOException {
    try (PdfRead read = report("--neighbour", table.toString())) {
      assertThat(read.bookmarks()).contains("Beside neighbours");
      assertThat(read.text()).contains("The double-mass curve breaks at 2025-0", "Pettitt 1979");
      assertThat(read.text()).containsPattern("2024-11 \\d+ [0-9.]+ [0-9.]+ 0\\.8");
      assertThat(read.text()).containsPattern("2025-03 \\d+ [0-9.]+ [0-9.]+ 1\\.6");
      assertThat(read.elements().stream().map(PDStructureElement::getAlternateDescription))
          .anyMatch(words -> words != null && words.startsWith("A curve from zero"));
    }
  }

  @Test
  void withoutANeighbourTheSectionIsLeftOut() throws IOException {
    try (PdfRead read = report()) {
      assertThat(read.bookmarks()).doesNotContain("Beside neighbours");
    }
  }

  @Test
  void aTableThatCanNotBeReadIsNamedAndNothingIsWritten() throws IOException {
    Path out = folder.resolve("none.pdf");
    Path broken = Files.writeString(folder.resolve("broken.csv"), "start,end\nx,y\n");
    for (Path bad : List.of(broken, folder.resolve("absent.csv"))) {
      Terminal run = Terminal.run("report", SEASON, "--out", out, "--neighbour", bad);
      assertThat(run.code()).isEqualTo(1);
      assertThat(run.err()).contains(bad.getFileName().toString());
      assertThat(out).doesNotExist();
    }
  }
}
