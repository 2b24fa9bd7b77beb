package org.rimebook.export.verify;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Where a text differs first from the one the folder gives, in words. */
final class FirstDifference {

  private static final int SHOWN = 80;
  private static final String MARK = "\uFEFF";

  private final List<String> says;
  private final List<String> gives;

  private FirstDifference(List<String> says, List<String> gives) {
    this.says = says;
    this.gives = gives;
  }

  /**
   * The first difference of two texts that aren't the same.
   *
   * @param table whether they are tables with a header line
   * @param says the text of the file
   * @param gives the text the folder gives
   */
  static String words(boolean table, String says, String gives) {
    if (says.startsWith(MARK)) {
      return "line 1 starts with a byte order mark, which the program doesn't write; saved again by"
          + " another program?";
    }
    FirstDifference texts =
        new FirstDifference(List.of(says.split("\n", -1)), List.of(gives.split("\n", -1)));
    return table ? texts.ofTable() : texts.ofLines();
  }

  private int line() {
    int shorter = Math.min(says.size(), gives.size());
    return IntStream.range(0, shorter)
        .filter(i -> !says.get(i).equals(gives.get(i)))
        .findFirst()
        .orElse(shorter);
  }

  private boolean endsEarly(int line) {
    return line == says.size() - 1 && says.get(line).isEmpty();
  }

  private boolean runsOn(int line) {
    return line == gives.size() - 1 && gives.get(line).isEmpty();
  }

  private String ofTable() {
    int line = line();
    if (line >= Math.min(says.size(), gives.size()) || endsEarly(line) || runsOn(line)) {
      return ofLines();
    }
    if (says.get(line).equals(gives.get(line) + "\r")) {
      return ofLines();
    }
    List<String> names = fields(gives.get(0));
    List<String> own = fields(says.get(line));
    List<String> due = fields(gives.get(line));
    if (line == 0) {
      return header(own, due);
    }
    int column =
        IntStream.range(0, Math.min(own.size(), due.size()))
            .filter(i -> !own.get(i).equals(due.get(i)))
            .findFirst()
            .orElse(Math.min(own.size(), due.size()));
    if (column >= own.size() || column >= due.size() || column >= names.size()) {
      return "line "
          + (line + 1)
          + ": has "
          + own.size()
          + " fields, the folder gives "
          + due.size()
          + others(line);
    }
    return "line "
        + (line + 1)
        + " ("
        + due.get(0)
        + "), column "
        + names.get(column)
        + ": says "
        + quoted(own.get(column))
        + ", the folder gives "
        + quoted(due.get(column))
        + others(line);
  }

  private static String header(List<String> own, List<String> due) {
    if (own.size() == due.size() && new TreeSet<>(own).equals(new TreeSet<>(due))) {
      return "line 1: the columns stand in another order";
    }
    List<String> missing = due.stream().filter(name -> !own.contains(name)).toList();
    List<String> foreign = own.stream().filter(name -> !due.contains(name)).toList();
    return "line 1: the columns aren't those of the table"
        + (missing.isEmpty() ? "" : "; it lacks " + String.join(", ", missing))
        + (foreign.isEmpty() ? "" : "; it has " + shortened(String.join(", ", foreign)));
  }

  private String ofLines() {
    int line = line();
    if (line >= says.size() || endsEarly(line)) {
      int last = endsEarly(line) ? line : says.size();
      return "ends after line " + last + "; " + lines(rows(gives) - last) + " more are due";
    }
    if (line >= gives.size() || runsOn(line)) {
      return "line " + (line + 1) + " and what follows aren't due; the folder gives " + line;
    }
    String own = says.get(line);
    String due = gives.get(line);
    if (own.equals(due + "\r")) {
      return "line " + (line + 1) + " ends in CR LF instead of LF; saved again by another program?";
    }
    return "line "
        + (line + 1)
        + ": says "
        + quoted(own.strip())
        + ", the folder gives "
        + quoted(due.strip())
        + others(line);
  }

  /** Lines of a text that ends with a line end or without. */
  private static int rows(List<String> lines) {
    return lines.get(lines.size() - 1).isEmpty() ? lines.size() - 1 : lines.size();
  }

  private static String lines(int count) {
    return count == 1 ? "1 line" : count + " lines";
  }

  private String others(int first) {
    long more =
        IntStream.range(first + 1, Math.min(says.size(), gives.size()))
            .filter(i -> !says.get(i).equals(gives.get(i)))
            .count();
    int longer = Math.abs(rows(says) - rows(gives));
    return (more == 0 ? "" : "; " + more + " more lines differ")
        + (longer == 0
            ? ""
            : "; it has " + lines(longer) + (rows(says) > rows(gives) ? " too many" : " too few"));
  }

  /** Fields of a line; the whole line as one when its quotes don't close. */
  private static List<String> fields(String line) {
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(line)) {
      return reader.stream().findFirst().map(CsvRecord::getFields).orElse(List.of(""));
    } catch (CsvParseException e) {
      return List.of(line);
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory can't fail", e);
    }
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "nothing" : "'" + shortened(text) + "'";
  }

  private static String shortened(String text) {
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
  }
}
