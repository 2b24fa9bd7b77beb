package org.rimebook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each library, and each part of the JDK with a price, stays in the packages that need it. */
class LibraryFenceTest {

  /** A fence: the class names it holds, and the packages that may use them. */
  enum Fence {
    SCREEN(
        "java\\.awt\\.(?!(Basic)?Stroke|Color|Font|Graphics2D|Paint|Shape|RenderingHints|geom\\.|font\\.|image\\.)"
            + ".*|javax\\.swing\\..*",
        "desk"),
    DRAWING("java\\.awt\\..*", "export", "desk"),
    PICTURE_FILES("javax\\.imageio\\..*", "export", "desk"),
    SVG("org\\.apache\\.batik\\..*", "export"),
    PDF("(org\\.apache\\.(pdfbox|fontbox)|de\\.rototor)\\..*", "export", "desk"),
    CHARTS("org\\.jfree\\..*", "export", "desk"),
    WIDGETS("(com\\.formdev\\.flatlaf|net\\.miginfocom)\\..*", "desk"),
    FILE_OBJECTS(
        "java\\.io\\.(File|File(In|Out)putStream|File(Read|Writ)er|RandomAccess.*)", "desk"),
    CSV_WRITING("de\\.siegmar\\.fastcsv\\.writer\\..*", "export", "practice"),
    CSV_READING("de\\.siegmar\\.fastcsv\\.(?!writer\\.).*", "record", "export"),
    FAST_DOUBLE_PARSER("ch\\.randelshofer\\..*", "record"),
    JSON("com\\.fasterxml\\.jackson\\..*", "station", "export"),
    COMMAND_LINE("picocli\\..*", "command"),
    STATISTICS(
        "org\\.apache\\.commons\\.math3\\..*",
        "depth",
        "accumulation",
        "undercatch",
        "upkeep",
        "practice"),
    LOGGING("(java\\.util\\.logging|org\\.slf4j)\\..*|java\\.lang\\.System\\$Logger.*"),
    OLD_DATES("java\\.util\\.(Date|.*Calendar|TimeZone)|java\\.sql\\..*", "export", "desk");

    private final Pattern fenced;
    private final String[] users;

    Fence(String fenced, String... users) {
      this.fenced = Pattern.compile(fenced);
      this.users = users;
    }

    private ArchRule rule(Layout layout) {
      String allowed = String.join(", ", users);
      return classes()
          .should(
              new Condition(
                  "leave " + fenced + " to [" + allowed + "]", type -> strays(layout, type)));
    }

    private Stream<String> strays(Layout layout, JavaClass type) {
      boolean entryPoint = this == COMMAND_LINE && layout.isEntryPoint(type);
      if (entryPoint || layout.isIn(type, users)) {
        return Stream.empty();
      }
      return type.getDirectDependenciesFromSelf().stream()
          .map(Dependency::getTargetClass)
          .map(used -> used.getBaseComponentType().getFullName())
          .filter(fenced.asMatchPredicate())
          .map(used -> type.getFullName() + " uses " + used);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aLibraryStaysInItsPackages(Fence fence) {
    fence.rule(Layout.MAIN).check(Layout.MAIN.classes());
  }

  @ParameterizedTest
  @EnumSource
  void aClassOutsideTheFenceIsFound(Fence fence) {
    assertThatThrownBy(() -> fence.rule(Layout.WRONG).check(Layout.WRONG.classes()))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("wrong.totals.UsesEveryLibrary");
  }

  @ParameterizedTest
  @EnumSource
  void aFenceNamesOnlyListedPackages(Fence fence) {
    assertThat(Layout.ORDER).containsAll(Arrays.asList(fence.users));
  }
}
