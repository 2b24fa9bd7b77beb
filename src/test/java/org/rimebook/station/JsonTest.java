package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
    assertThat(problem.what())
        .isEqualTo("isn't well-formed JSON: the member \"a\" stands there twice");
  }

  @Test
  void aMissingCommaIsNamedWhereTheNextMemberStarts() {
    Problem problem = problem("{\r\n  \"a\": 1\r\n  \"b\": 2\r\n}", 1);
    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.column()).isEqualTo(3);
  }

  /** Each row: the text, and what is said to be wrong with it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "not json at all | a value (a text in double quotes, a number, true, false, null, or what"
            + " { or [ opens) is expected, not \"not\"",
        "{\"a\": [1 | the text ends before every quote and bracket is closed",
        "{\"a\" | the text ends before every quote and bracket is closed",
        "{\"a\": \"b | the text ends before every quote and bracket is closed",
        "{\"a\": NaN} | \"NaN\" isn't a number here; null stands for none",
        "{\"a\": 01} | a number is expected, written like 12.5, -3 or 8.2e-6",
        "{\"a\": +1} | a number is expected, written like 12.5, -3 or 8.2e-6",
        "{\"a\": 1.} | a number is expected, written like 12.5, -3 or 8.2e-6",
        "{'a': 1} | the name of a member is expected in double quotes, not '''",
        "{\"a\": 1,} | the name of a member is expected in double quotes, not '}'",
        "{\"a\": 1 \"b\": 2} | a comma is expected before '\"'",
        "{\"a\" 1} | a colon is expected after the name, not '1'",
        "{\"a\": 1] | ']' doesn't close what is open here",
        "// note | JSON has no comments",
        "{\"a\": 1 /* note */} | JSON has no comments",
        "{\"a\": \"\\q\"} | a backslash in a text is written twice",
        "[1,] | a value (a text in double quotes, a number, true, false, null, or what { or ["
            + " opens) is expected, not ']'",
        "{\"a\": \"\\u12g4\"} | it can't be read on from here",
      })
  void brokenTextIsNamedInWordsForPeople(String text, String words) {
    assertThat(problem(text, 1).what()).isEqualTo("isn't well-formed JSON: " + words);
  }

  @Test
  void aTextThatBeginsWrongIsToldHowToBegin() {
    assertThat(problem("not json at all", 5))
        .extracting(Problem::line, Problem::column, Problem::remedy)
        .containsExactly(5L, 1L, "Begin with { and end with }");
    assertThat(problem("{\"a\": b}", 1).remedy()).isEqualTo("Mend it there");
  }

  @Test
  void nestingWithoutEndIsAProblemNotACrash() {
    assertThat(problem("[".repeat(100_000), 1).what()).startsWith("isn't well-formed JSON: ");
  }
}
