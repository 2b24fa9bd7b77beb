package org.rimebook.record;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Tells whether the last field of a text without a last line end was cut inside its number: loggers
 * write a column with as many decimals in every row, or without any. How many rows are compared is
 * our own choice.
 */
final class CutField {

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d*)?");
  private static final int ROWS_COMPARED = 20;
  private static final int FEWEST_COMPARED = 5;

  private CutField() {}

  /**
   * Whether the number at the end has fewer decimals, or where the column has none fewer digits,
   * than it has in each of the rows before it; never when these are too few to tell.
   *
   * @param lines the last lines of a text, in order
   * @param delimiter field delimiter
   */
  static boolean atEndOf(List<String> lines, char delimiter) {
    List<String> last = Fields.split(lines.get(lines.size() - 1), delimiter);
    String end = last.get(last.size() - 1);
    int fewestDecimals = Integer.MAX_VALUE;
    int mostDecimals = 0;
    int fewestDigits = Integer.MAX_VALUE;
    int compared = 0;
    for (int i = lines.size() - 2; i >= 0 && compared < ROWS_COMPARED; i--) {
      List<String> row = Fields.split(lines.get(i), delimiter);
      String field = row.get(row.size() - 1);
      if (row.size() == last.size() && NUMBER.matcher(field).matches()) {
        fewestDecimals = Math.min(fewestDecimals, decimals(field));
        mostDecimals = Math.max(mostDecimals, decimals(field));
        fewestDigits = Math.min(fewestDigits, digits(field));
        compared++;
      }
    }
    if (compared < FEWEST_COMPARED || !NUMBER.matcher(end).matches()) {
      return false;
    }
    return mostDecimals > 0 ? decimals(end) < fewestDecimals : digits(end) < fewestDigits;
  }

  private static int decimals(String number) {
    int mark = Math.max(number.indexOf('.'), number.indexOf(','));
    return mark < 0 ? 0 : number.length() - mark - 1;
  }

  private static int digits(String number) {
    return (int) number.chars().filter(Character::isDigit).count();
  }
}
