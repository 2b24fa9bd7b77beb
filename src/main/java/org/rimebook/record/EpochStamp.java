package org.rimebook.record;

/**
 * Reads stamps that count seconds or milliseconds since 1970-01-01T00:00Z, with or without a
 * fraction.
 */
final class EpochStamp implements StampReader {

  private static final double LATEST_MS = 7.3e12;

  private final double unitMs;
  private final NumberReader numbers;

  /**
   * @param unitMs length of the unit counted [ms]
   */
  EpochStamp(double unitMs) {
    this.unitMs = unitMs;
    this.numbers = NumberReader.withDecimal(' ');
  }

  @Override
  public long epochMs(char[] text, int offset, int length) {
    double count = numbers.value(text, offset, length);
    double ms = count * unitMs;
    return numbers.lastWasNumber() && ms >= 0 && ms < LATEST_MS ? Math.round(ms) : UNREADABLE;
  }
}
