package org.rimebook.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a single cell looks like, for finding out how a file is laid out. */
final class Cells {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][-+]?\\d+)?");
  private static final Pattern COMMA = Pattern.compile("[-+]?\\d*,\\d+");
  private static final Pattern POINT = Pattern.compile("[-+]?\\d*\\.\\d*([eE][-+]?\\d+)?");
  private static final List<StampReader> STAMPS = stamps();
  private static final double EARLIEST_EPOCH_S = 1e8;

  private Cells() {}

  private static List<StampReader> stamps() {
    List<StampReader> stamps = new ArrayList<>();
    for (DateOrder order : DateOrder.values()) {
      stamps.add(new CivilStamp(order, 0));
    }
    stamps.add(new DigitStamp(0));
    return stamps;
  }

  static boolean isNumber(String cell) {
    return NUMBER.matcher(cell).matches();
  }

  static boolean hasDecimalComma(String cell) {
    return cell.indexOf(',') >= 0 && COMMA.matcher(cell).matches();
  }

  static boolean hasDecimalPoint(String cell) {
    return cell.indexOf('.') >= 0 && POINT.matcher(cell).matches();
  }

  /** Whether a cell is a number or stands for one that is missing. */
  static boolean isNumberOrMissing(String cell) {
    if (isNumber(cell)) {
      return true;
    }
    return NumberReader.isMissingWord(cell);
  }

  /** Whether a cell is a written date. */
  static synchronized boolean isDate(String cell) {
    for (StampReader stamps : STAMPS) {
      if (stamps.epochMs(cell) != StampReader.UNREADABLE) {
        return true;
      }
    }
    return false;
  }

  /** Whether a cell can count seconds or milliseconds since 1970, later than 1973. */
  static boolean canBeEpoch(String cell) {
    return isNumber(cell)
        && Double.parseDouble(cell.replace(',', '.')) >= EARLIEST_EPOCH_S
        && !cell.toLowerCase(Locale.ROOT).contains("e");
  }
}
