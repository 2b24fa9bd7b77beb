package org.rimebook.record;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * One season of readings in time order. Rows are strictly increasing in time. A row's stamp is the
 * end of its sampling interval whatever the logger's habit. Immutable.
 */
public final class SeasonRecord {

  private final long[] stampsMs;
  private final List<Column> frequencies;
  private final List<Column> channels;
  private final List<SamplingRun> sampling;
  private final Provenance provenance;

  /**
   * @param stampsMs ends of the sampling intervals [ms since epoch], strictly increasing; copied
   * @param frequencies one column a wire, in the order of the station sheet, as logged [Hz, or
   *     counts when the sheet says so]
   * @param channels one column a channel, in the order of the station sheet, in the unit inside
   *     ({@link org.rimebook.station.Unit#insideSymbol()})
   * @param sampling runs that cover all rows in order; empty only when there are no rows
   * @param provenance where the rows came from
   */
  public SeasonRecord(
      long[] stampsMs,
      List<Column> frequencies,
      List<Column> channels,
      List<SamplingRun> sampling,
      Provenance provenance) {
    this.stampsMs = stampsMs.clone();
    this.frequencies = List.copyOf(frequencies);
    this.channels = List.copyOf(channels);
    this.sampling = List.copyOf(sampling);
    this.provenance = Objects.requireNonNull(provenance, "provenance");
    for (int row = 1; row < stampsMs.length; row++) {
      if (stampsMs[row] <= stampsMs[row - 1]) {
        throw new IllegalArgumentException("stamps must increase: row " + row);
      }
    }
  }

  /** Rows. */
  public int size() {
    return stampsMs.length;
  }

  /** End of a row's sampling interval [ms since epoch]. */
  public long stampMs(int row) {
    return stampsMs[row];
  }

  /** The first row stamped at or after an instant; {@link #size()} when there is none. */
  public int firstRowAtOrAfter(long epochMs) {
    int found = Arrays.binarySearch(stampsMs, epochMs);
    return found >= 0 ? found : -found - 1;
  }

  /** A wire's frequency as logged [Hz or counts]. */
  public Column frequency(int wire) {
    return frequencies.get(wire);
  }

  /** A channel's values in the unit inside. */
  public Column channel(int channel) {
    return channels.get(channel);
  }

  /** Stretches of one sampling interval, in order. */
  public List<SamplingRun> sampling() {
    return sampling;
  }

  /** Where the rows came from. */
  public Provenance provenance() {
    return provenance;
  }
}
