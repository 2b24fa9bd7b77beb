package org.rimebook.desk.model.against;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.rimebook.accumulation.SunMark;
import org.rimebook.station.Wire;

/** The views of raw against derived in words. */
public final class AgainstWords {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private final Readings readings;

  /**
   * @param readings what the words are about
   */
  public AgainstWords(Readings readings) {
    this.readings = readings;
  }

  /** A reading of one wire against the bucket's depth. */
  public String onCurve(int wire, int row) {
    return time(row)
        + "  "
        + readings.wires().get(wire).name()
        + number("  %.2f Hz", readings.frequencyHz(wire, row))
        + number("  bucket %.2f mm", readings.bucketMm(row))
        + number("  off its curve %+.2f mm", readings.onCurve(wire).departureMm(row))
        + state(wire, row);
  }

  /** A reading of two wires against each other. */
  public String pair(Asked.Pair pair, int row) {
    return time(row)
        + depth(pair.one(), row)
        + depth(pair.other(), row)
        + number("  apart %+.2f mm", readings.pair(pair.one(), pair.other()).departureMm(row))
        + state(pair.one(), row)
        + state(pair.other(), row);
  }

  /** What a scatter shows, wire by wire. */
  public String summary(Scatter scatter) {
    StringBuilder words = new StringBuilder();
    for (Scatter.Layer layer : scatter.layers()) {
      Spread spread = layer.spread();
      words.append(words.isEmpty() ? "" : ". ").append(layer.name().words()).append(": ");
      if (spread.used() == 0) {
        words.append("no readings used");
      } else {
        words
            .append(spread.used())
            .append(number(" readings, mean %+.2f mm", spread.meanMm()))
            .append(number(", spread %.2f mm", spread.sdMm()))
            .append(furthest(layer));
      }
      words.append(spread.leftOut() == 0 ? "" : ", " + spread.leftOut() + " left out");
    }
    return words.toString();
  }

  /** The reading that lies furthest off in a scatter, in a few words; empty without readings. */
  public String furthestOff(Scatter scatter) {
    return scatter.layers().stream()
        .filter(layer -> layer.spread().used() > 0)
        .reduce((one, other) -> distanceMm(other) > distanceMm(one) ? other : one)
        .map(
            layer ->
                layer.name().words()
                    + number(": mean %+.2f mm", layer.spread().meanMm())
                    + furthest(layer))
        .orElse("");
  }

  private static double distanceMm(Scatter.Layer layer) {
    Spread spread = layer.spread();
    return Math.abs(layer.points().departureMm(spread.furthestRow()) - spread.meanMm());
  }

  private String furthest(Scatter.Layer layer) {
    int row = layer.spread().furthestRow();
    return number(", furthest from that %+.2f mm on ", layer.points().departureMm(row)) + time(row);
  }

  /** The sun's mark: how many days are behind it, and how large it is on each wire. */
  public String summary(SunMark sun) {
    if (sun.days().isEmpty()) {
      return "No dry day with readings of all wires in every hour";
    }
    StringBuilder words = new StringBuilder(days(sun.days().size()));
    List<Wire> wires = readings.wires();
    for (int wire = 0; wire < wires.size(); wire++) {
      words
          .append(wire == 0 ? ": " : ", ")
          .append(wires.get(wire).name())
          .append(number(" moves by %.2f mm", sun.rangeMm(wire)));
    }
    return words.toString();
  }

  /** One hour of the sun's mark. */
  public String hour(SunMark sun, int hour) {
    StringBuilder words = new StringBuilder(hours(hour));
    List<Wire> wires = readings.wires();
    for (int wire = 0; wire < wires.size(); wire++) {
      words
          .append("  ")
          .append(wires.get(wire).name())
          .append(number(" %+.3f", sun.meanMm(wire, hour)));
      sun.standardErrorMm(wire, hour).ifPresent(se -> words.append(number(" ± %.3f", se)));
      words.append(" mm");
    }
    return words.toString();
  }

  /** An hour of the day. */
  public static String hours(int hour) {
    return String.format(Locale.ROOT, "%02d:00 to %02d:00", hour, hour + 1);
  }

  private static String days(int count) {
    return count + (count == 1 ? " dry day" : " dry days");
  }

  private String depth(int wire, int row) {
    return "  " + readings.wires().get(wire).name() + number(" %.2f mm", depthMm(wire, row));
  }

  private double depthMm(int wire, int row) {
    return readings.depths().depthMm(wire, row);
  }

  private String state(int wire, int row) {
    return readings.depths().used(wire, row)
        ? ""
        : "  "
            + readings.wires().get(wire).name()
            + " left out: "
            + readings.depths().screening(wire, row).code().replace('-', ' ');
  }

  private String time(int row) {
    return TIME.format(
        Instant.ofEpochMilli(readings.record().stampMs(row))
            .atOffset(readings.season().sheet().utcOffset()));
  }

  private static String number(String form, double value) {
    // What rounds to nothing has no sign.
    return String.format(Locale.ROOT, form, value).replaceAll("-(0\\.0+ )", "$1").replace('-', '−');
  }
}
