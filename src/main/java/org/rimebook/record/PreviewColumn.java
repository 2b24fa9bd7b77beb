package org.rimebook.record;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A column as the first rows of a file show it.
 *
 * @param name its name in the header
 * @param unitText what stands beneath the name, empty when nothing does
 * @param kind what it holds
 * @param least least of its numbers; empty unless it holds any
 * @param median median of its numbers; empty unless it holds any
 * @param greatest greatest of its numbers; empty unless it holds any
 * @param whole whether it holds numbers and all are whole
 * @param missing what stands for missing numbers in it, as written, each once
 */
public record PreviewColumn(
    String name,
    String unitText,
    Kind kind,
    OptionalDouble least,
    OptionalDouble median,
    OptionalDouble greatest,
    boolean whole,
    List<String> missing) {

  public PreviewColumn {
    missing = List.copyOf(missing);
  }

  /** What a column holds. */
  public enum Kind {
    TIME,
    NUMBER,
    TEXT
  }

  /** The column with these cells, none of them empty. */
  static PreviewColumn of(String name, String unitText, List<String> cells, char decimal) {
    NumberReader numbers = NumberReader.withDecimal(decimal);
    double[] values =
        cells.stream()
            .mapToDouble(cell -> numbers.value(cell.toCharArray(), 0, cell.length()))
            .filter(value -> !Double.isNaN(value))
            .sorted()
            .toArray();
    Kind kind = kind(cells);
    boolean summed = kind == Kind.NUMBER && values.length > 0;
    return new PreviewColumn(
        name,
        unitText,
        kind,
        summed ? OptionalDouble.of(values[0]) : OptionalDouble.empty(),
        summed ? OptionalDouble.of(median(values)) : OptionalDouble.empty(),
        summed ? OptionalDouble.of(values[values.length - 1]) : OptionalDouble.empty(),
        summed && Arrays.stream(values).allMatch(value -> value == Math.rint(value)),
        kind == Kind.NUMBER ? missing(cells, numbers) : List.of());
  }

  private static List<String> missing(List<String> cells, NumberReader numbers) {
    return cells.stream().distinct().filter(numbers::isMissing).toList();
  }

  /** A time is a date, or a count since 1970 that goes up from row to row. */
  private static Kind kind(List<String> cells) {
    if (most(cells.stream().map(Structure::isStamp).toList())
        && (!most(cells.stream().map(Cells::isNumber).toList()) || goesUp(cells))) {
      return Kind.TIME;
    }
    return most(cells.stream().map(Cells::isNumberOrMissing).toList()) ? Kind.NUMBER : Kind.TEXT;
  }

  private static boolean most(List<Boolean> cells) {
    long yes = cells.stream().filter(b -> b).count();
    return yes * 10 >= cells.size() * 9L && !cells.isEmpty();
  }

  private static boolean goesUp(List<String> cells) {
    double[] counts =
        cells.stream()
            .filter(Cells::isNumber)
            .mapToDouble(cell -> Double.parseDouble(cell.replace(',', '.')))
            .toArray();
    double[] sorted = counts.clone();
    Arrays.sort(sorted);
    return Arrays.equals(counts, sorted) && counts[0] < counts[counts.length - 1];
  }

  private static double median(double[] sorted) {
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
