package org.rimebook.record;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks through all stamps of a file for what settles the order of its dates: a field that can't be
 * a month, or a step over a day's end that goes on at the sampling interval in one order and leaps
 * by weeks in the others.
 */
final class OrderSurvey extends AbstractBaseCsvCallbackHandler<Object> {

  private static final long LEAP_MS = 20 * CivilTime.DAY_MS;
  private static final long JITTER_MS = 1000;

  private final List<DateOrder> orders;
  private final CivilStamp[] readers;
  private final int timeColumn;
  private final long[] read;
  private final long[] regular;
  private final long[] last;
  private final long[] lastStep;

  private OrderSurvey(List<DateOrder> orders, int timeColumn) {
    this.orders = orders;
    this.timeColumn = timeColumn;
    readers = orders.stream().map(order -> new CivilStamp(order, 0)).toArray(CivilStamp[]::new);
    read = new long[readers.length];
    regular = new long[readers.length];
    last = new long[readers.length];
    lastStep = new long[readers.length];
    Arrays.fill(last, StampReader.UNREADABLE);
  }

  /** The orders the file leaves open, most of its stamps being readable in each. */
  static List<DateOrder> of(RecordFile file, Dialect dialect, int timeColumn, StampForm form)
      throws IOException {
    OrderSurvey survey = new OrderSurvey(form.orders(), timeColumn);
    try (TextFile text = TextFile.open(file.path())) {
      CsvText.of(text.reader(), dialect, true).read(survey);
    } catch (CsvParseException e) {
      return survey.left(); // what comes after isn't text
    }
    return survey.left();
  }

  @Override
  protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
    if (index != timeColumn) {
      return;
    }
    int start = offset;
    int end = offset + length;
    while (start < end && buffer[start] == ' ') {
      start++;
    }
    while (end > start && buffer[end - 1] == ' ') {
      end--;
    }
    long[] steps = new long[readers.length];
    for (int i = 0; i < readers.length; i++) {
      long ms = readers[i].epochMs(buffer, start, end - start);
      if (ms == StampReader.UNREADABLE) {
        continue;
      }
      read[i]++;
      steps[i] = last[i] == StampReader.UNREADABLE ? 0 : ms - last[i];
      last[i] = ms;
    }
    weigh(steps);
  }

  private void weigh(long[] steps) {
    boolean leap = Arrays.stream(steps).anyMatch(step -> Math.abs(step) > LEAP_MS);
    for (int i = 0; i < steps.length; i++) {
      boolean goesOn = steps[i] > 0 && Math.abs(steps[i] - lastStep[i]) <= JITTER_MS;
      if (leap && goesOn && steps[i] < LEAP_MS) {
        regular[i]++;
      }
      lastStep[i] = steps[i];
    }
  }

  @Override
  protected Object buildRecord() {
    return null;
  }

  private List<DateOrder> left() {
    long most = Arrays.stream(read).max().orElse(0);
    int[] fitting = IntStream.range(0, read.length).filter(i -> read[i] == most).toArray();
    int[] steady = Arrays.stream(fitting).filter(i -> regular[i] > 0).toArray();
    int[] left = steady.length == 1 ? steady : fitting;
    return Arrays.stream(left).mapToObj(orders::get).toList();
  }
}
