package org.rimebook.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the record is laid out. What is empty is detected from the files.
 *
 * @param files glob patterns relative to the season folder
 * @param timeColumn column that holds the time stamp
 * @param missing tokens that stand for a missing value, beside an empty field
 * @param delimiter field delimiter
 * @param decimal decimal mark, '.' or ','
 * @param timeFormat pattern of the time stamp in the letters of {@code
 *     java.time.format.DateTimeFormatter}, or {@code epoch-seconds} or {@code epoch-milliseconds}
 * @param timeIs which end of its interval a stamp names
 * @param frequencyKind what the wires' columns hold
 * @param gateS gate time of a counter [s]; present when {@code frequencyKind} is counts
 */
public record RecordLayout(
    List<String> files,
    String timeColumn,
    List<String> missing,
    Optional<Character> delimiter,
    Optional<Character> decimal,
    Optional<String> timeFormat,
    TimeIs timeIs,
    FrequencyKind frequencyKind,
    OptionalDouble gateS) {

  public RecordLayout {
    files = List.copyOf(files);
    missing = List.copyOf(missing);
  }

  /** Which end of its interval a time stamp names. */
  public enum TimeIs {
    START,
    END
  }

  /** What the wires' columns hold. */
  public enum FrequencyKind {
    HERTZ,
    COUNTS
  }

  /** What one unit of a wire's column stands for [Hz]. */
  public double hertzPerUnit() {
    return frequencyKind == FrequencyKind.COUNTS ? 1 / gateS.orElseThrow() : 1;
  }
}
