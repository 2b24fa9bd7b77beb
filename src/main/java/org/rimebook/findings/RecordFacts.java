package org.rimebook.findings;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.rimebook.depth.ConvertedWires;
import org.rimebook.depth.CounterStep;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;

/**
 * What checks need to know of a record that no notebook changes, worked out when it is first asked
 * for: a season is looked at under many notebooks. For use by several threads.
 */
public final class RecordFacts {

  private static final long TEN_MINUTES_MS = 600_000;

  private final ConvertedWires converted;
  private final Once<Grid> grid = new Once<>(this::cut);
  private final Map<String, double[]> channels = new ConcurrentHashMap<>();
  private final Map<Integer, HeldRuns> held = new ConcurrentHashMap<>();
  private final Map<Integer, Double> counterSteps = new ConcurrentHashMap<>();

  /**
   * @param converted the record with its readings as depths
   */
  public RecordFacts(ConvertedWires converted) {
    this.converted = converted;
  }

  /** The record with its readings as depths. */
  public ConvertedWires converted() {
    return converted;
  }

  private SeasonRecord record() {
    return converted.record();
  }

  /**
   * Blocks of time that follow each other.
   *
   * @param startMs start of the first [ms since epoch]
   * @param lengthMs length of each [ms]
   * @param firstRow first row of each, and the row after the last; not to be changed
   */
  record Grid(long startMs, long lengthMs, int[] firstRow) {

    int size() {
      return firstRow.length - 1;
    }
  }

  /** Blocks as {@link Blocks} describes them. */
  Grid grid() {
    return grid.get();
  }

  private Grid cut() {
    long longest = record().sampling().stream().mapToLong(run -> run.intervalMs()).max().orElse(0);
    long tens = Math.max(1, Math.floorDiv(longest + TEN_MINUTES_MS - 1, TEN_MINUTES_MS));
    long length = tens * TEN_MINUTES_MS;
    long start = Math.floorDiv(record().stampMs(0) - 1, length) * length;
    long last = record().stampMs(record().size() - 1);
    int size = (int) Math.floorDiv(last - 1 - start, length) + 1;
    int[] firstRow = new int[size + 1];
    int row = 0;
    for (int block = 0; block < size; block++) {
      while (row < record().size() && record().stampMs(row) <= start + block * length) {
        row++;
      }
      firstRow[block] = row;
    }
    firstRow[size] = record().size();
    return new Grid(start, length, firstRow);
  }

  /**
   * Means of a channel in its unit inside, one a block, NaN where it gave nothing.
   *
   * @param quantity what is measured, a {@link Channel} constant
   * @return no elements when the station doesn't measure it
   */
  double[] channel(String quantity) {
    return channels.computeIfAbsent(quantity, this::means).clone();
  }

  private double[] means(String quantity) {
    int channel =
        converted.sheet().channel(quantity).map(converted.sheet().channels()::indexOf).orElse(-1);
    if (channel < 0) {
      return new double[0];
    }
    Column column = record().channel(channel);
    double[] means = new double[grid().size()];
    for (int block = 0; block < means.length; block++) {
      means[block] =
          Arrays.stream(values(column, block))
              .filter(Double::isFinite)
              .average()
              .orElse(Double.NaN);
    }
    return means;
  }

  private double[] values(Column column, int block) {
    int from = grid().firstRow[block];
    double[] values = new double[grid().firstRow[block + 1] - from];
    for (int i = 0; i < values.length; i++) {
      values[i] = column.get(from + i);
    }
    return values;
  }

  /** Runs of readings of a wire that stay the same. */
  HeldRuns held(int wire) {
    return held.computeIfAbsent(wire, w -> new HeldRuns(record().frequency(w), counterStep(wire)));
  }

  /** The smallest step a wire's counter shows, in the unit of the record; 0 when none. */
  double counterStep(int wire) {
    return counterSteps.computeIfAbsent(wire, w -> CounterStep.of(record().frequency(w)));
  }
}
