package org.rimebook.station;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A JSON value that knows where it stands, so that a wrong value can be named by line and column.
 *
 * @param value a {@code Map<String, Json>} (object), {@code List<Json>} (array), {@code String},
 *     {@code Double}, {@code Boolean}, or {@link #NULL}
 * @param line 1-based line of the value's first character
 * @param column 1-based column of the value's first character
 */
public record Json(Object value, long line, long column) {

  /** Stands for the JSON literal null. */
  public static final Object NULL = new Object();

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /**
   * Reads one JSON value that fills the whole text.
   *
   * @param text the JSON text; a byte order mark before it is passed over
   * @param file name used in problems
   * @param firstLine line number of the text's first line in the file, 1-based
   * @throws InputException when the text isn't one well-formed JSON value without repeated members
   */
  public static Json parse(String text, String file, long firstLine) throws InputException {
    String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
    try (JsonParser parser = FACTORY.createParser(bare)) {
      parser.nextToken();
      if (parser.currentToken() == null) {
        throw new InputException(
            new Problem(file, firstLine, 1, "holds no JSON value", "Write one, or remove it"));
      }
      Json json = read(parser, firstLine - 1);
      if (parser.nextToken() != null) {
        JsonLocation at = parser.currentTokenLocation();
        throw new InputException(
            new Problem(
                file,
                at.getLineNr() + firstLine - 1,
                at.getColumnNr(),
                "holds more after the end of its JSON value",
                "Remove what follows"));
      }
      return json;
    } catch (JsonProcessingException e) {
      throw new InputException(JsonFault.problem(e, file, firstLine));
    } catch (IOException e) {
      throw new IllegalStateException("reading from a string can't fail", e);
    }
  }

  private static Json read(JsonParser parser, long lineShift) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    long line = at.getLineNr() + lineShift;
    JsonToken token = parser.currentToken();
    Object value =
        switch (token) {
          case START_OBJECT -> readObject(parser, lineShift);
          case START_ARRAY -> readArray(parser, lineShift);
          case VALUE_STRING -> parser.getText();
          case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
          case VALUE_TRUE -> Boolean.TRUE;
          case VALUE_FALSE -> Boolean.FALSE;
          default -> NULL;
        };
    return new Json(value, line, at.getColumnNr());
  }

  private static Map<String, Json> readObject(JsonParser parser, long lineShift)
      throws IOException {
    Map<String, Json> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      members.put(name, read(parser, lineShift));
    }
    return Collections.unmodifiableMap(members);
  }

  private static List<Json> readArray(JsonParser parser, long lineShift) throws IOException {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(read(parser, lineShift));
    }
    return Collections.unmodifiableList(items);
  }

  /** A word for what the value is, for messages. */
  public String kind() {
    if (value instanceof Map) {
      return "an object";
    }
    if (value instanceof List) {
      return "a list";
    }
    if (value instanceof String text) {
      return "the text \"" + text + "\"";
    }
    if (value == NULL) {
      return "null";
    }
    return value.toString();
  }
}
