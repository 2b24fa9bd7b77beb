package org.rimebook.record;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

  private static final Pattern YEARS = Pattern.compile("\\d{4}");
  private static final Pattern NUMBERS = Pattern.compile("\\d+");
  private static final Pattern LETTERS = Pattern.compile("\\p{L}+");
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
    Map<String, List<String>> shapes =
        all.stream()
            .collect(Collectors.groupingBy(StampForm::shape, TreeMap::new, Collectors.toList()));
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
      long[] reading = stamps.stream().mapToLong(reader::epochMs).toArray();
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
    if (readable(stamps.stream().mapToLong(digits::epochMs).toArray()) * 2 > stamps.size()) {
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

  private static long readable(long[] reading) {
    return Arrays.stream(reading).filter(ms -> ms != StampReader.UNREADABLE).count();
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

  private static String shape(String stamp) {
    String noLetters = LETTERS.matcher(stamp).replaceAll("a");
    return NUMBERS.matcher(YEARS.matcher(noLetters).replaceAll("Y")).replaceAll("n");
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
