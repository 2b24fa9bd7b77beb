package org.rimebook.record;

import java.util.List;

/**
 * How a file is laid out, as far as its first lines tell.
 *
 * @param delimiter field delimiter; {@link Fields#BLANKS} for runs of blanks
 * @param headerLine line of the header, 0 when there is none
 * @param names names in the header, without the empty ones at its end
 * @param units lines of units and the like beneath the header
 * @param fields fields of a row
 * @param decimal decimal mark; a blank when no number of the first lines has one
 */
record Dialect(
    char delimiter,
    long headerLine,
    List<String> names,
    List<LogicalLine> units,
    int fields,
    char decimal) {

  Dialect {
    names = List.copyOf(names);
    units = List.copyOf(units);
  }

  /** The last line before the rows, as far as it is header or units. */
  long lastHeadLine() {
    return units.isEmpty() ? headerLine : units.get(units.size() - 1).number();
  }

  /** The same rows under the header of another file. */
  Dialect under(List<String> header) {
    return new Dialect(delimiter, headerLine, header, units, fields, decimal);
  }

  /** Whether a line of the head is a row. */
  boolean isRow(LogicalLine line) {
    return line.number() > lastHeadLine() && !line.isBlank() && !line.isComment();
  }

  /** Delimiter and decimal mark in words. */
  static String words(char delimiter, char decimal) {
    return word(delimiter) + " between fields, decimal " + (decimal == ',' ? "comma" : "point");
  }

  /** A delimiter in a word. */
  static String word(char delimiter) {
    return switch (delimiter) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '\t' -> "tab";
      case '|' -> "bar";
      case Fields.BLANKS -> "blanks";
      default -> "'" + delimiter + "'";
    };
  }
}
