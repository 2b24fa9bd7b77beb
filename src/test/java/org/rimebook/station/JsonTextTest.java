package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {

  @ParameterizedTest
  @CsvSource({"200, 200", "-3, -3", "0.1, 0.1", "1050.1, 1050.1", "1.0E21, 1.0E21", "0.002, 0.002"})
  void aNumberIsWrittenInTheFewestDigitsThatReadBack(double value, String text) {
    assertThat(JsonText.oneLine(Map.of("a", value))).isEqualTo("{\"a\": " + text + "}");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void aNumberJsonHasNoTextForIsRefused(double value) {
    assertThatThrownBy(() -> JsonText.oneLine(Map.of("a", value)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyKindOfValueStaysOnTheLine() {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("text", "say \"snow\"\n\u00e9");
    object.put("none", null);
    object.put("list", List.of(true, new BigDecimal("1.50"), List.of(), Map.of()));
    assertThat(JsonText.oneLine(object))
        .isEqualTo(
            "{\"text\": \"say \\\"snow\\\"\\n\u00e9\", \"none\": null, \"list\": [true, 1.50, [], {}]}");
  }

  @Test
  void aListOfObjectsHasOneOnEachLine() {
    assertThat(JsonText.laidOut(Map.of("wires", List.of(Map.of("a", 1), Map.of("b", 2)))))
        .isEqualTo("{\n  \"wires\": [\n    {\"a\": 1},\n    {\"b\": 2}\n  ]\n}\n");
  }

  @Test
  void whatDoesNotFitOnALineHasAMemberOnEach() {
    Map<String, Object> inner = new LinkedHashMap<>();
    inner.put("a", "x".repeat(60));
    inner.put("b", List.of("y".repeat(50), "z".repeat(50)));
    assertThat(JsonText.laidOut(Map.of("gauge", inner)).lines())
        .containsExactly(
            "{",
            "  \"gauge\": {",
            "    \"a\": \"" + "x".repeat(60) + "\",",
            "    \"b\": [",
            "      \"" + "y".repeat(50) + "\",",
            "      \"" + "z".repeat(50) + "\"",
            "    ]",
            "  }",
            "}");
  }
}
