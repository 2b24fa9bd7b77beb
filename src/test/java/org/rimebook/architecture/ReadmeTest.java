package org.rimebook.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Reason;

class ReadmeTest {

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"));
  }

  @Test
  void everyReasonCodeIsDocumentedInTheWordsOfTheProgram() throws IOException {
    assertThat(readme())
        .contains(
            Stream.of(Reason.values())
                .map(reason -> "| `" + reason.code() + "` | " + reason.words() + " |")
                .toList());
  }

  @Test
  void everyQualityIsDocumented() throws IOException {
    assertThat(readme())
        .contains(Stream.of(Quality.values()).map(q -> "`" + q.code() + "`").toList());
  }
}
