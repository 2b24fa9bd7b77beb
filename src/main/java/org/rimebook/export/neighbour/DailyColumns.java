package org.rimebook.export.neighbour;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Problem;
import org.rimebook.totals.Quality;
import org.rimebook.totals.neighbour.DayCatch;

/** Where the columns of a daily table stand, and how its fields are read. */
record DailyColumns(String file, List<String> names) {

  private static final String START = "start";
  private static final String END = "end";
  private static final String CATCH = "catch_mm";
  private static final String QUALITY = "quality";
  private static final String SINCE = "accumulated_since";
  private static final String TIME = "Write a time like 2025-01-15T00:00:00-07:00, with its offset";

  /** More than ever fell in a day anywhere, so that it can only be a mistake [mm]. */
  private static final double MOST_MM = 10_000;

  static DailyColumns of(String file, List<String> header) throws InputException {
    List<String> names = header.stream().map(String::strip).toList();
    for (String needed : List.of(START, END, CATCH)) {
      long found = names.stream().filter(needed::equals).count();
      if (found != 1) {
        boolean semicolons = names.size() == 1 && names.get(0).contains(";");
        throw new InputException(
            new Problem(
                file,
                1,
                0,
                found == 0
                    ? "no column \"" + needed + "\"; there are " + String.join(", ", names)
                    : "the column \"" + needed + "\" stands there " + found + " times",
                semicolons
                    ? "Save it with commas between the fields"
                    : "Name the columns start, end and catch_mm, each once"));
      }
    }
    return new DailyColumns(file, names);
  }

  DailyRow row(long line, List<String> fields) throws InputException {
    if (fields.size() != names.size()) {
      throw new InputException(
          new Problem(
              file,
              line,
              0,
              "has " + fields.size() + " fields, the header names " + names.size(),
              "Was the file cut off? Export it again"));
    }
    Fields row = new Fields(line, fields);
    long fromMs = row.time(START).orElseThrow(() -> row.problem(START, "is empty", TIME));
    long toMs = row.time(END).orElseThrow(() -> row.problem(END, "is empty", TIME));
    if (toMs <= fromMs) {
      throw row.problem(END, "isn't after the start", "Give each day its start and its end");
    }
    long sinceMs = row.time(SINCE).orElse(fromMs);
    if (sinceMs > fromMs) {
      throw row.problem(SINCE, "is after the start of its day", "Leave it empty, or correct it");
    }
    DayCatch day = new DayCatch(new Interval(sinceMs, toMs), row.catchMm(), row.quality());
    return new DailyRow(line, new Interval(fromMs, toMs), day);
  }

  /** One row's fields by the name of their column. */
  private final class Fields {

    private final long line;
    private final List<String> fields;

    Fields(long line, List<String> fields) {
      this.line = line;
      this.fields = fields;
    }

    private String text(String column) {
      int index = names.indexOf(column);
      return index < 0 ? "" : fields.get(index).strip();
    }

    InputException problem(String column, String what, String remedy) {
      int index = names.indexOf(column);
      return new InputException(
          new Problem(file, line, 0, "field " + (index + 1) + ", " + column + ", " + what, remedy));
    }

    OptionalLong time(String column) throws InputException {
      String text = text(column);
      if (text.isEmpty()) {
        return OptionalLong.empty();
      }
      try {
        return OptionalLong.of(OffsetDateTime.parse(text).toInstant().toEpochMilli());
      } catch (DateTimeParseException | ArithmeticException e) {
        throw problem(column, "'" + text + "' isn't a time with an offset", TIME);
      }
    }

    OptionalDouble catchMm() throws InputException {
      String text = text(CATCH);
      if (text.isEmpty()) {
        return OptionalDouble.empty();
      }
      try {
        double mm = new BigDecimal(text).doubleValue();
        if (mm >= 0 && mm <= MOST_MM) {
          return OptionalDouble.of(mm);
        }
      } catch (NumberFormatException e) {
        // Said below, as for numbers that can't be a catch.
      }
      throw problem(
          CATCH,
          "'" + text + "' isn't a catch in mm",
          "Write a number that isn't negative, with a point, or leave it empty when missing");
    }

    Quality quality() throws InputException {
      String text = text(QUALITY);
      if (text.isEmpty()) {
        return Quality.UNCHECKED;
      }
      for (Quality quality : Quality.values()) {
        if (quality.code().equals(text)) {
          return quality;
        }
      }
      throw problem(
          QUALITY,
          "'" + text + "' isn't a quality",
          "Use "
              + Arrays.stream(Quality.values())
                  .map(Quality::code)
                  .collect(Collectors.joining(", ")));
    }
  }
}
