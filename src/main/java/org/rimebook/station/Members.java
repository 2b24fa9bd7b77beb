package org.rimebook.station;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * Takes the members of one JSON object by name and type, and collects a located {@link Problem} for
 * each that is absent or of the wrong type, so that one reading names them all. Members nobody
 * asked for are left in {@link #untaken()}.
 */
public final class Members {

  private final String file;
  private final String where;
  private final Json at;
  private final Map<String, Json> members;
  private final List<Problem> problems;
  private final Set<String> taken = new HashSet<>();

  private Members(String file, String where, Json at, List<Problem> problems) {
    this.file = file;
    this.where = where;
    this.at = at;
    this.members = objectOf(at);
    this.problems = problems;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Json> objectOf(Json json) {
    return json.value() instanceof Map ? (Map<String, Json>) json.value() : Map.of();
  }

  /**
   * The members of an object; a problem is noted when the value isn't one.
   *
   * @param file name used in problems
   * @param where path of the object inside the file, for messages; empty for the root
   * @param json the value
   * @param problems where problems are collected
   */
  public static Members of(String file, String where, Json json, List<Problem> problems) {
    if (!(json.value() instanceof Map)) {
      problems.add(
          new Problem(
              file,
              json.line(),
              json.column(),
              (where.isEmpty() ? "the file" : where) + " must be an object, not " + json.kind(),
              "Write it in braces: { ... }"));
    }
    return new Members(file, where, json, problems);
  }

  /** Notes a problem at a member, or at the object when the member is absent. */
  public void problem(String name, String what, String remedy) {
    Json place = members.getOrDefault(name, at);
    problems.add(new Problem(file, place.line(), place.column(), path(name) + " " + what, remedy));
  }

  private String path(String name) {
    return where.isEmpty() ? name : where + "." + name;
  }

  private Optional<Json> take(String name) {
    taken.add(name);
    Json json = members.get(name);
    return json == null || json.value() == Json.NULL ? Optional.empty() : Optional.of(json);
  }

  /** Whether the member is there and not null. */
  public boolean has(String name) {
    return members.containsKey(name) && members.get(name).value() != Json.NULL;
  }

  /** A text, when it is there. */
  public Optional<String> text(String name) {
    Optional<Json> json = take(name);
    if (json.isPresent() && !(json.get().value() instanceof String)) {
      problem(name, "must be a text, not " + json.get().kind(), "Write it in double quotes");
      return Optional.empty();
    }
    return json.map(j -> (String) j.value());
  }

  /** A text that must be there and not blank; an empty text stands in when it isn't. */
  public String requiredText(String name, String example) {
    if (!has(name)) {
      taken.add(name);
      problem(
          name, "is absent or null", "Enter it, for example \"" + name + "\": \"" + example + "\"");
      return "";
    }
    Optional<String> text = text(name);
    if (text.isPresent() && text.get().isBlank()) {
      problem(name, "is empty", "Fill it in, for example \"" + example + "\"");
      return "";
    }
    return text.orElse("");
  }

  /**
   * An instant, when it is there: ISO 8601 date and time with an offset, years 0000 to 9999. One
   * that can't be read is noted and taken as absent.
   */
  public Optional<Instant> instant(String name) {
    Optional<String> text = text(name);
    try {
      Optional<OffsetDateTime> time = text.map(OffsetDateTime::parse);
      if (time.isEmpty() || (time.get().getYear() >= 0 && time.get().getYear() <= 9999)) {
        return time.map(OffsetDateTime::toInstant);
      }
      problem(name, "lies in the year " + time.get().getYear(), "Write a year of four digits");
    } catch (DateTimeException e) {
      problem(
          name,
          (lacksOffset(text.get()) ? "has no offset: \"" : "isn't a time: \"") + text.get() + "\"",
          "Write date, time and offset, for example \"2025-01-15T10:30:00-07:00\"");
    }
    return Optional.empty();
  }

  private static boolean lacksOffset(String text) {
    try {
      LocalDateTime.parse(text);
      return true;
    } catch (DateTimeException e) {
      return false;
    }
  }

  /** A finite number, when it is there. */
  public OptionalDouble number(String name) {
    Optional<Json> json = take(name);
    if (json.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (!(json.get().value() instanceof Double number) || !Double.isFinite(number)) {
      problem(
          name,
          "must be a number, not " + json.get().kind(),
          "Write it without quotes, with a decimal point");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(number);
  }

  /** A number that must be there; NaN stands in when it isn't. */
  public double requiredNumber(String name, String example) {
    if (!has(name)) {
      taken.add(name);
      problem(name, "is absent or null", "Enter it, for example \"" + name + "\": " + example);
      return Double.NaN;
    }
    return number(name).orElse(Double.NaN);
  }

  /** The objects of a list, empty when the member is absent. */
  public List<Members> objects(String name) {
    return list(name, json -> of(file, path(name), json, problems));
  }

  /** The texts of a list, empty when the member is absent. */
  public List<String> texts(String name) {
    return list(name, json -> json).stream()
        .filter(
            json -> {
              boolean ok = json.value() instanceof String;
              if (!ok) {
                problems.add(
                    new Problem(
                        file,
                        json.line(),
                        json.column(),
                        path(name) + " must hold texts, not " + json.kind(),
                        "Write it in double quotes"));
              }
              return ok;
            })
        .map(json -> (String) json.value())
        .toList();
  }

  private <T> List<T> list(String name, Function<Json, T> each) {
    Optional<Json> json = take(name);
    if (json.isEmpty()) {
      return List.of();
    }
    if (!(json.get().value() instanceof List<?> items)) {
      problem(name, "must be a list, not " + json.get().kind(), "Write it in brackets: [ ... ]");
      return List.of();
    }
    List<T> values = new ArrayList<>();
    for (Object item : items) {
      values.add(each.apply((Json) item));
    }
    return values;
  }

  /** The members of a nested object; an empty one when it is absent. */
  public Members object(String name) {
    Optional<Json> json = take(name);
    return json.map(j -> of(file, path(name), j, problems))
        .orElseGet(
            () ->
                new Members(
                    file, path(name), new Json(Map.of(), at.line(), at.column()), problems));
  }

  /** Paths of the members nobody asked for, in the order of the file. */
  public List<String> untaken() {
    return members.keySet().stream().filter(name -> !taken.contains(name)).map(this::path).toList();
  }

  /** Line of the object's first character, 1-based. */
  public long line() {
    return at.line();
  }
}
