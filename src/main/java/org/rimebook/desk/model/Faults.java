package org.rimebook.desk.model;

import java.util.stream.Collectors;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/** What went wrong, in words for the analyst. */
public final class Faults {

  private Faults() {}

  /** The words: of each problem where the input is at fault, else of the fault itself. */
  public static String words(Throwable fault) {
    if (fault instanceof InputException input) {
      return input.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }
    if (fault instanceof OutOfMemoryError) {
      return "The season needs more memory than the program may use: start it with a larger -Xmx";
    }
    String message = fault.getMessage();
    return fault.getClass().getSimpleName() + (message == null ? "" : ": " + message);
  }
}
