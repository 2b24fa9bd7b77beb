package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Whatever sits before the real window, one after the other: there is one screen with one mouse,
 * and the build runs tests in two machines at once, each a class at a time.
 */
class SittingsTest {

  private static final Path HERE = Path.of("src/test/java/org/rimebook/desk");
  private static final Pattern SITS = Pattern.compile("\\bSitting\\.(at|with)\\(");
  private static final Pattern LEFT_OUT = Pattern.compile("<exclude>\\*\\*/desk/(.+)</exclude>");

  @Nested
  class Bench extends BenchWindowTest {}

  @Nested
  class Decisions extends FindingsWindowTest {}

  @Nested
  class Paper extends PaperWindowTest {}

  @Nested
  class Scale extends ScaleWindowTest {}

  @Nested
  class Screens extends ScreensTest {}

  @Nested
  class Watched extends WatchdogTest {}

  @Nested
  class Whole extends WindowTest {}

  @Test
  void everyTestThatSitsBeforeTheWindowIsAmongThemAndRunsNowhereElse() throws IOException {
    List<String> among =
        Arrays.stream(SittingsTest.class.getDeclaredClasses())
            .map(nested -> nested.getSuperclass().getSimpleName() + ".java")
            .toList();
    assertThat(sitters()).isNotEmpty().containsExactlyInAnyOrderElementsOf(among);
    assertThat(leftOut()).containsExactlyInAnyOrderElementsOf(among);
  }

  private static List<String> sitters() throws IOException {
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(HERE, "*Test.java")) {
      for (Path file : files) {
        if (SITS.matcher(Files.readString(file)).find()) {
          names.add(file.getFileName().toString());
        }
      }
    }
    return names;
  }

  /** What the build doesn't take for a test of its own. */
  private static List<String> leftOut() throws IOException {
    return LEFT_OUT
        .matcher(Files.readString(Path.of("pom.xml")))
        .results()
        .map(found -> found.group(1))
        .toList();
  }
}
