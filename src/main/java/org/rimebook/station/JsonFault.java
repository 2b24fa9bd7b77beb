package org.rimebook.station;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in plain words where a text stops being JSON and what is expected there. */
final class JsonFault {

  private static final String VALUE =
      "a value (a text in double quotes, a number, true, false, null, or what { or [ opens)";

  /** What the parser says, with what it means; the first that fits holds. */
  private static final Map<Pattern, String> WORDS = words();

  private JsonFault() {}

  private static Map<Pattern, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    String found = "Unexpected character \\('(.)' .*";
    words.put("Unrecognized token '(.*)': .*", VALUE + " is expected, not \"$1\"");
    words.put("Non-standard token '(.*)': .*", "\"$1\" isn't a number here; null stands for none");
    words.put("Duplicate field '(.*)'", "the member \"$1\" stands there twice");
    words.put(found + "maybe a \\(non-standard\\) comment.*", "JSON has no comments");
    words.put(found + "expecting comma.*", "a comma is expected before '$1'");
    words.put(found + "expecting a colon.*", "a colon is expected after the name, not '$1'");
    words.put(found + "field name", "the name of a member is expected in double quotes, not '$1'");
    words.put(found + "expected a valid value.*", VALUE + " is expected, not '$1'");
    words.put(
        "(.*in numeric value.*|Invalid numeric value.*)",
        "a number is expected, written like 12.5, -3 or 8.2e-6");
    words.put(
        "Unexpected end-of-input.*", "the text ends before every quote and bracket is closed");
    words.put("Unexpected close marker '(.)'.*", "'$1' doesn't close what is open here");
    words.put("Illegal unquoted character.*", "a text in quotes must end on the line it began on");
    words.put("Unrecognized character escape.*", "a backslash in a text is written twice");
    Map<Pattern, String> compiled = new LinkedHashMap<>();
    words.forEach((said, means) -> compiled.put(Pattern.compile(said, Pattern.DOTALL), means));
    return compiled;
  }

  /** The fault as a problem of a file whose text starts on a line. */
  static Problem problem(JsonProcessingException fault, String file, long firstLine) {
    JsonLocation at = fault.getLocation();
    boolean atStart = at != null && at.getLineNr() == 1 && at.getColumnNr() == 1;
    return new Problem(
        file,
        at == null ? firstLine : at.getLineNr() + firstLine - 1,
        at == null ? 0 : at.getColumnNr(),
        "isn't well-formed JSON: " + meaning(fault.getOriginalMessage()),
        atStart ? "Begin with { and end with }" : "Mend it there");
  }

  private static String meaning(String said) {
    for (Map.Entry<Pattern, String> entry : WORDS.entrySet()) {
      Matcher matcher = entry.getKey().matcher(said);
      if (matcher.matches()) {
        return matcher.replaceFirst(entry.getValue());
      }
    }
    return "it can't be read on from here";
  }
}
