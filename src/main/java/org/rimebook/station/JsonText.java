package org.rimebook.station;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Writes JSON the way people lay it out: an object or list that fits on a line stays on one, a list
 * of objects has one on each line. Values are {@code Map<String, ?>}, {@code List<?>}, text,
 * numbers, booleans and null; members keep the order of their map.
 */
public final class JsonText {

  private static final int WIDTH = 100;
  private static final String STEP = "  ";

  private JsonText() {}

  /** An object on one line, without a line end. */
  public static String oneLine(Map<String, ?> object) {
    return flat(object);
  }

  /** An object with one member on each line, two spaces deep, ending with a line feed. */
  public static String laidOut(Map<String, ?> object) {
    return members(object, "") + "\n";
  }

  private static String flat(Object value) {
    if (value instanceof Map<?, ?> object) {
      return object.entrySet().stream()
          .map(member -> name(member) + flat(member.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(JsonText::flat).collect(Collectors.joining(", ", "[", "]"));
    }
    if (value instanceof String text) {
      return quoted(text);
    }
    return value instanceof Double number ? number(number) : String.valueOf(value);
  }

  private static String laidOut(Object value, String indent, int taken) {
    String line = flat(value);
    boolean fits = indent.length() + taken + line.length() < WIDTH;
    if (value instanceof Map<?, ?> object && !fits) {
      return members(object, indent);
    }
    if (value instanceof List<?> list && !list.isEmpty()) {
      if (list.stream().anyMatch(Map.class::isInstance) || !fits) {
        return block(list, indent, item -> laidOut(item, indent + STEP, 1), "[", "]");
      }
    }
    return line;
  }

  private static String members(Map<?, ?> object, String indent) {
    return block(
        object.entrySet(),
        indent,
        member -> {
          String name = name(member);
          return name + laidOut(member.getValue(), indent + STEP, name.length() + 1);
        },
        "{",
        "}");
  }

  private static <T> String block(
      Iterable<T> items, String indent, Function<T, String> each, String open, String close) {
    StringBuilder text = new StringBuilder(open);
    String separator = "\n";
    for (T item : items) {
      text.append(separator).append(indent).append(STEP).append(each.apply(item));
      separator = ",\n";
    }
    return text.append('\n').append(indent).append(close).toString();
  }

  private static String name(Map.Entry<?, ?> member) {
    return quoted(String.valueOf(member.getKey())) + ": ";
  }

  private static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  /** The shortest text that reads back as the same number, the same on every Java version. */
  private static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("JSON has no number for " + value);
    }
    String text = NumberOutput.toString(value, true);
    return text.endsWith(".0") && value != 0 ? text.substring(0, text.length() - 2) : text;
  }
}
