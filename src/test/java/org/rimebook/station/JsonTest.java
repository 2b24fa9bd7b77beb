package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {

  private static Problem problem(String text, long firstLine) {
    List<Problem> problems =
        catchThrowableOfType(InputException.class, () -> Json.parse(text, "a.json", firstLine))
            .problems();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  private static Json member(Json object, String name) {
    return (Json) ((Map<?, ?>) object.value()).get(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void aValueKnowsItsLineAndColumnWhateverTheLineEnds(String lineEnd) throws InputException {
    String text = String.join(lineEnd, "{", "  \"a\": [1,", "    true],", "\t\"b\": null", "}");
    Json json = Json.parse(text, "a.json", 1);
    assertThat(json.line()).isEqualTo(1);
    assertThat(json.column()).isEqualTo(1);
    assertThat((List<?>) member(json, "a").value())
        .asInstanceOf(InstanceOfAssertFactories.list(Json.class))
        .containsExactly(new Json(1.0, 2, 9), new Json(Boolean.TRUE, 3, 5));
    assertThat(member(json, "b")).isEqualTo(new Json(Json.NULL, 4, 7));
  }

  @Test
  void linesAreCountedFromTheOneGiven() throws InputException {
    assertThat(member(Json.parse("{\n\"a\": 1}", "a.json", 40), "a"))
        .isEqualTo(new Json(1.0, 41, 6));
  }

  @Test
  void aByteOrderMarkTakesNoColumn() throws InputException {
    assertThat(member(Json.parse("\uFEFF{\"a\": 1}", "a.json", 1), "a"))
        .isEqualTo(new Json(1.0, 1, 7));
  }

  @Test
  void columnsCountCharactersNotBytes() throws InputException {
    assertThat(
            member(Json.parse("{\"gr\u00f6\u00dfe\": \"\u00e9\", \"a\": 1}", "a.json", 1), "a")
                .column())
        .isEqualTo(21);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  \n "})
  void nothingIsNotAValue(String text) {
    assertThat(problem(text, 7))
        .hasToString("a.json, line 7, column 1: holds no JSON value. Write one, or remove it");
  }

  @Test
  void aSecondValueIsRefusedWhereItStarts() {
    assertThat(problem("{}\r\n {}", 1))
        .extracting(Problem::what, Problem::line, Problem::column)
        .containsExactly("holds more after the end of its JSON value", 2L, 2L);
  }

  @Test
  void aRepeatedMemberIsRefused() {
    Problem problem = problem("{\r\n  \"a\": 1,\r\n  \"a\": 2\r\n}", 1);
    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.what()).isEqualTo("isn't well-formed JSON: Duplicate field 'a'");
  }

  @Test
  void aMissingCommaIsNamedWhereTheNextMemberStarts() {
    Problem problem = problem("{\r\n  \"a\": 1\r\n  \"b\": 2\r\n}", 1);
    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.column()).isEqualTo(3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{\"a\": [1", "{\"a\"", "{\"a\": NaN}", "{\"a\": 01}", "{\"a\": +1}", "{'a': 1}"})
  void brokenTextIsNamedInWordsForPeople(String text) {
    assertThat(problem(text, 1).what())
        .startsWith("isn't well-formed JSON: ")
        .doesNotContain("Feature", "Source:", "REDACTED", "`");
  }

  @Test
  void nestingWithoutEndIsAProblemNotACrash() {
    assertThat(problem("[".repeat(100_000), 1).what()).startsWith("isn't well-formed JSON: ");
  }
}
