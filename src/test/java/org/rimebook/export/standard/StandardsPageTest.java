package org.rimebook.export.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rimebook.totals.Quality;

class StandardsPageTest {

  private static String page() throws IOException {
    return Files.readString(Path.of("src/site/standards.md"));
  }

  @Test
  void thePageHasTheWordsThatTheProgramWrites() throws IOException {
    assertThat(page())
        .contains(
            Stream.of(QualityTerm.values())
                .map(
                    term ->
                        "| `"
                            + term.word()
                            + "` | `"
                            + term.ogcUri()
                            + "` | "
                            + term.flag()
                            + " | "
                            + term.bufr033020()
                            + " "
                            + term.bufrWords()
                            + " |")
                .toList());
  }

  @Test
  void everyQualityHasOneTerm() {
    assertThat(Quality.values())
        .allSatisfy(quality -> assertThat(QualityTerm.of(quality).quality()).isEqualTo(quality));
    assertThat(QualityTerm.values()).hasSameSizeAs(Quality.values());
  }

  @Test
  void everyFormatIsOnThePageAndInTheReadme() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    for (StandardFormat format : StandardFormat.values()) {
      assertThat(page()).contains("--also " + format.code(), "`" + format.fileName() + "`");
      assertThat(readme).contains("--also " + format.code());
    }
  }
}
