package org.rimebook.station;

import java.util.Objects;

/**
 * Something wrong in an input file, said so that a person can mend it.
 *
 * @param file name of the file relative to the season folder, or as given on the command line
 * @param line 1-based line, 0 when the problem has no line
 * @param column 1-based column within the line, 0 when the problem has no column
 * @param what what is wrong, in words with numbers and units
 * @param remedy what to do about it; empty when the words already say it
 */
public record Problem(String file, long line, long column, String what, String remedy) {

  public Problem {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(remedy, "remedy");
  }

  /** A problem with a whole file. */
  public static Problem inFile(String file, String what, String remedy) {
    return new Problem(file, 0, 0, what, remedy);
  }

  /** The problem on one line: {@code file, line 3, column 7: what. remedy}. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(", line ").append(line);
      if (column > 0) {
        text.append(", column ").append(column);
      }
    }
    text.append(": ").append(what);
    if (!remedy.isEmpty()) {
      text.append(". ").append(remedy);
    }
    return text.toString();
  }
}
