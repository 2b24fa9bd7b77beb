package org.rimebook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same season folder gives the same bytes only if nothing asks the machine where it stands. */
class NoMachineDefaultsTest {

  private static final String TIME = "java\\.time\\.(chrono\\.)?";

  private static final List<String> ZONE =
      List.of(
          TIME + "ZoneId\\.systemDefault\\(\\)",
          TIME + "Clock\\.(systemDefaultZone|tick(Millis|Seconds|Minutes))\\(.*",
          TIME + "(Local|Zoned|Offset|Year|Month)[A-Za-z]*\\.now\\(\\)",
          "java\\.util\\.TimeZone\\.getDefault\\(\\)");

  private static final List<String> LOCALE =
      List.of(
          "java\\.util\\.Locale\\.getDefault\\(.*",
          "java\\.lang\\.String\\.to(Lower|Upper)Case\\(\\)",
          "java\\.lang\\.String\\.format(ted)?\\((java\\.lang\\.String, )?\\[Ljava\\.lang\\.Object;\\)",
          "java\\.io\\.Print(Writer|Stream)\\.(printf|format)\\(java\\.lang\\.String, .*",
          TIME + "format\\.DateTimeFormatter\\.ofPattern\\(java\\.lang\\.String\\)",
          TIME + "format\\.DateTimeFormatter\\.ofLocalized.*",
          TIME + "format\\.DateTimeFormatterBuilder\\.toFormatter\\(\\)",
          "java\\.text\\.[A-Za-z]+\\.get[A-Za-z]*Instance\\(\\)",
          "java\\.text\\.(Decimal|SimpleDate|Message)Format\\.<init>\\((java\\.lang\\.String)?\\)",
          "java\\.util\\.(Scanner|Formatter)\\.<init>\\((?!.*java\\.util\\.Locale).*");

  private static final List<String> CHARSET =
      List.of(
          "java\\.nio\\.charset\\.Charset\\.defaultCharset\\(\\)",
          "java\\.lang\\.String\\.getBytes\\(\\)",
          "java\\.lang\\.String\\.<init>\\(\\[B(, int, int)?\\)",
          "java\\.io\\.InputStreamReader\\.<init>\\(java\\.io\\.InputStream\\)",
          "java\\.io\\.OutputStreamWriter\\.<init>\\(java\\.io\\.OutputStream\\)",
          "java\\.io\\.PrintWriter\\.<init>\\(java\\.io\\.OutputStream(, boolean)?\\)",
          "java\\.io\\.ByteArrayOutputStream\\.toString\\(\\)");

  private static final List<String> CHANCE_AND_LINE_ENDS =
      List.of(
          "java\\.lang\\.Math\\.random\\(\\)",
          "java\\.util\\.(Random|SplittableRandom)\\.<init>\\(\\)",
          "java\\.util\\.Collections\\.shuffle\\(java\\.util\\.List\\)",
          "java\\.util\\.concurrent\\.ThreadLocalRandom\\.current\\(\\)",
          "java\\.lang\\.System\\.lineSeparator\\(\\)");

  /** These may differ in the last digit between processors; StrictMath doesn't. */
  private static final List<String> LAST_DIGIT =
      List.of(
          "java\\.lang\\.Math\\.(a?sin|a?cos|a?tan|atan2|sinh|cosh|tanh|exp|expm1|log|log10|log1p"
              + "|pow|cbrt)\\(.*");

  @Test
  void nothingAsksTheMachineForItsZoneLocaleCharsetLuckOrLastDigit() {
    rule().check(Layout.MAIN.classes());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "LocalDateTime.now()",
        "ZoneId.systemDefault()",
        "Locale.getDefault()",
        "String.toLowerCase()",
        "String.format(java.lang.String, [Ljava.lang.Object;)",
        "String.formatted([Ljava.lang.Object;)",
        "PrintWriter.printf(java.lang.String, [Ljava.lang.Object;)",
        "DateTimeFormatter.ofPattern(java.lang.String)",
        "DecimalFormat.<init>(java.lang.String)",
        "Scanner.<init>(java.lang.String)",
        "String.getBytes()",
        "String.<init>([B)",
        "Random.<init>()",
        "Math.exp(double)"
      })
  void aCallThatDependsOnTheMachineIsFound(String call) {
    assertThatThrownBy(() -> rule().check(Layout.WRONG.classes()))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining(call);
  }

  @Test
  void aCallThatNamesItsLocaleIsLeftAlone() {
    assertThatThrownBy(() -> rule().check(Layout.WRONG.classes()))
        .hasMessageNotContaining("java.util.Locale,")
        .hasMessageNotContaining("(java.util.Locale)");
  }

  private static ArchRule rule() {
    List<String> all =
        List.of(ZONE, LOCALE, CHARSET, CHANCE_AND_LINE_ENDS, LAST_DIGIT).stream()
            .flatMap(List::stream)
            .toList();
    return classes()
        .should(new Condition("name the zone, locale and charset it means", Accesses.to(all)::of));
  }
}
