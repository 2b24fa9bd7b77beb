package org.rimebook.record;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.rimebook.station.Problem;

/** Says that the dates of a file can be read in more than one way, and what settles it. */
final class OpenDates {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);

  private OpenDates() {}

  static Problem problem(FilePlan plan, List<DateOrder> orders) {
    String stamp = plan.form().example();
    String readings =
        orders.stream().map(order -> reading(stamp, order)).collect(Collectors.joining(" or "));
    String formats =
        orders.stream()
            .map(
                order ->
                    "\"time_format\": \""
                        + StampPatterns.of(stamp, order)
                        + "\" for "
                        + reading(stamp, order))
            .collect(Collectors.joining(", or "));
    return Problem.inFile(
        plan.file().name(),
        "the time " + stamp + " can be " + readings + "; nothing in the record settles it",
        "Add to record in station.json " + formats);
  }

  private static String reading(String stamp, DateOrder order) {
    return DAY.format(Instant.ofEpochMilli(new CivilStamp(order, 0).epochMs(stamp)));
  }
}
