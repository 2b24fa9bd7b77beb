package org.rimebook.record;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.rimebook.station.InputException;

/**
 * How the stamps of a file are written.
 *
 * @param kind the kind of stamp
 * @param orders orders of the date its stamps can be read in, giving different times; one unless
 *     the stamps leave it open
 * @param pattern the station sheet's pattern; empty unless the kind is {@link Kind#PATTERN}
 * @param example a stamp of the file
 */
record StampForm(Kind kind, List<DateOrder> orders, String pattern, String example) {

  /** The value of {@code time_format} for seconds since 1970. */
  static final String EPOCH_SECONDS = "epoch-seconds";

  /** The value of {@code time_format} for milliseconds since 1970. */
  static final String EPOCH_MILLISECONDS = "epoch-milliseconds";

  private static final int YEAR_DIGITS = 4;
  private static final double SECONDS_BELOW = 1e11;

  /** Kinds of stamp. */
  enum Kind {
    CIVIL,
    DIGITS,
    EPOCH_SECONDS,
    EPOCH_MILLISECONDS,
    PATTERN
  }

  StampForm {
    orders = List.copyOf(orders);
  }

  /** The form the station sheet states. */
  static StampForm stated(String format, String example) {
    Kind kind =
        switch (format) {
          case EPOCH_SECONDS -> Kind.EPOCH_SECONDS;
          case EPOCH_MILLISECONDS -> Kind.EPOCH_MILLISECONDS;
          default -> Kind.PATTERN;
        };
    return new StampForm(kind, List.of(), format, example);
  }

  /** The form of some stamps, told by those of the commonest shape. */
  static StampForm of(List<String> all) {
    Map<String, List<String>> shapes = new TreeMap<>();
    for (String stamp : all) {
      shapes.computeIfAbsent(shape(stamp), s -> new ArrayList<>()).add(stamp);
    }
    List<String> stamps =
        shapes.values().stream().max(Comparator.comparingInt(List::size)).orElse(List.of());
    String example = stamps.isEmpty() ? "" : stamps.get(0);
    Optional<Kind> counted = counted(stamps);
    if (counted.isPresent()) {
      return new StampForm(counted.get(), List.of(), "", example);
    }
    List<DateOrder> orders = new ArrayList<>();
    List<long[]> readings = new ArrayList<>();
    long most = 0;
    for (DateOrder order : DateOrder.values()) {
      CivilStamp reader = new CivilStamp(order, 0);
      long[] reading = reading(stamps, reader);
      long read = readable(reading);
      if (read > most) {
        most = read;
        orders.clear();
        readings.clear();
      }
      if (read == most && readings.stream().noneMatch(other -> Arrays.equals(other, reading))) {
        orders.add(order);
        readings.add(reading);
      }
    }
    return new StampForm(Kind.CIVIL, orders, "", firstReadable(stamps, orders).orElse(example));
  }

  private static Optional<String> firstReadable(List<String> stamps, List<DateOrder> orders) {
    CivilStamp reader = new CivilStamp(orders.get(0), 0);
    return stamps.stream().filter(s -> reader.epochMs(s) != StampReader.UNREADABLE).findFirst();
  }

  /** Digits run together, or a count since 1970, when most stamps are numbers. */
  private static Optional<Kind> counted(List<String> stamps) {
    DigitStamp digits = new DigitStamp(0);
    if (readable(reading(stamps, digits)) * 2 > stamps.size()) {
      return Optional.of(Kind.DIGITS);
    }
    List<String> numbers = stamps.stream().filter(Cells::isNumber).toList();
    if (numbers.size() * 2 <= stamps.size()) {
      return Optional.empty();
    }
    double[] counts =
        numbers.stream()
            .mapToDouble(number -> Double.parseDouble(number.replace(',', '.')))
            .sorted()
            .toArray();
    boolean seconds = counts[counts.length / 2] < SECONDS_BELOW;
    return Optional.of(seconds ? Kind.EPOCH_SECONDS : Kind.EPOCH_MILLISECONDS);
  }

  private static long[] reading(List<String> stamps, StampReader reader) {
    long[] reading = new long[stamps.size()];
    for (int i = 0; i < reading.length; i++) {
      reading[i] = reader.epochMs(stamps.get(i));
    }
    return reading;
  }

  private static long readable(long[] reading) {
    long count = 0;
    for (long ms : reading) {
      count += ms != StampReader.UNREADABLE ? 1 : 0;
    }
    return count;
  }

  /** Whether more than one reading is left. */
  boolean isOpen() {
    return orders.size() > 1;
  }

  /** The same form with the order of its dates settled. */
  StampForm settled(DateOrder order) {
    return new StampForm(kind, List.of(order), pattern, example);
  }

  /** Separators and places of four-digit numbers of the date, alike for files one logger wrote. */
  String shape() {
    return shape(example.split("[ T]", 2)[0]);
  }

  /** A letter for each word, for each four digits and for the digits left; the rest as it is. */
  private static String shape(String stamp) {
    StringBuilder shape = new StringBuilder();
    int at = 0;
    while (at < stamp.length()) {
      char first = stamp.charAt(at);
      int from = at++;
      if (Character.isLetter(first)) {
        while (at < stamp.length() && Character.isLetter(stamp.charAt(at))) {
          at++;
        }
        shape.append('a');
      } else if (isDigit(first)) {
        while (at < stamp.length() && isDigit(stamp.charAt(at))) {
          at++;
        }
        shape.append("Y".repeat((at - from) / YEAR_DIGITS));
        shape.append((at - from) % YEAR_DIGITS > 0 ? "n" : "");
      } else {
        shape.append(first);
      }
    }
    return shape.toString();
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /**
   * A reader of such stamps.
   *
   * @param stationOffset offset of stamps that carry none
   * @throws InputException when the station sheet's pattern can't be used
   */
  StampReader reader(ZoneOffset stationOffset) throws InputException {
    long offsetMs = stationOffset.getTotalSeconds() * 1000L;
    return switch (kind) {
      case CIVIL -> new CivilStamp(orders.get(0), offsetMs);
      case DIGITS -> new DigitStamp(offsetMs);
      case EPOCH_SECONDS -> new EpochStamp(1000);
      case EPOCH_MILLISECONDS -> new EpochStamp(1);
      case PATTERN -> PatternStamp.of(pattern, stationOffset);
    };
  }

  /** The form in words. */
  String words() {
    String as = example.isEmpty() ? "" : " such as " + example;
    return switch (kind) {
      case CIVIL -> "time" + as + " (" + orders.get(0).words() + ")";
      case DIGITS -> "time in digits" + as;
      case EPOCH_SECONDS -> "time in seconds since 1970" + as;
      case EPOCH_MILLISECONDS -> "time in milliseconds since 1970" + as;
      case PATTERN -> "time as " + pattern;
    };
  }
}
