package org.rimebook.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DecisionRecordsTest {

  private static final Path DECISIONS = Path.of("src/site/decisions");
  private static final Pattern LAST_LINE = Pattern.compile("\nEnforced by: (.+)\n$");

  @ParameterizedTest
  @MethodSource("decisions")
  void aDecisionNamesTestsThatExist(Path decision) throws IOException {
    Matcher enforcedBy = LAST_LINE.matcher(Documents.text(decision));
    assertThat(enforcedBy.find()).as("%s ends in its tests", decision).isTrue();
    assertThat(Documents.quoted(enforcedBy.group(1)))
        .isNotEmpty()
        .isSubsetOf(Documents.testClasses());
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void aDecisionIsHalfAPageInThreeParts(Path decision) throws IOException {
    String text = Documents.text(decision);
    assertThat(text).containsSubsequence("## Context", "## Decision", "## Consequences");
    assertThat(text.split("\\s+")).hasSizeLessThan(300);
  }

  @Test
  void decisionsAreNumberedWithoutHoles() throws IOException {
    List<Path> decisions = decisions();
    for (int i = 0; i < decisions.size(); i++) {
      int number = i + 1;
      assertThat(decisions.get(i).getFileName().toString())
          .matches("0*" + number + "-[a-z-]+\\.md");
      assertThat(Documents.text(decisions.get(i))).startsWith("# " + number + ". ");
    }
  }

  private static List<Path> decisions() throws IOException {
    return Documents.in(DECISIONS);
  }
}
