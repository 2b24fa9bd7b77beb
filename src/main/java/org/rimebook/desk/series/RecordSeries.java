package org.rimebook.desk.series;

import java.util.function.IntToDoubleFunction;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;

/** One value a row of the record. */
public final class RecordSeries implements Series {

  private final SeasonRecord record;
  private final Reach reach;
  private final IntToDoubleFunction values;

  private RecordSeries(SeasonRecord record, IntToDoubleFunction values) {
    this.record = record;
    this.reach = new Reach(record);
    this.values = values;
  }

  /** A channel, in the unit inside. */
  public static RecordSeries channel(SeasonRecord record, int channel) {
    Column column = record.channel(channel);
    return new RecordSeries(record, column::get);
  }

  /** A wire's frequency as logged [Hz, or counts], used or not. */
  public static RecordSeries frequency(SeasonRecord record, int wire) {
    Column column = record.frequency(wire);
    return new RecordSeries(record, column::get);
  }

  /** A wire's depth [mm], used or not. */
  public static RecordSeries depth(SeasonRecord record, WireDepths depths, int wire) {
    return new RecordSeries(record, row -> depths.depthMm(wire, row));
  }

  /** The same without the readings of a wire that aren't used. */
  public RecordSeries used(WireDepths depths, int wire) {
    IntToDoubleFunction all = values;
    return new RecordSeries(
        record, row -> depths.used(wire, row) ? all.applyAsDouble(row) : Double.NaN);
  }

  @Override
  public int size() {
    return record.size();
  }

  @Override
  public long timeMs(int index) {
    return record.stampMs(index);
  }

  @Override
  public Object clock() {
    return record;
  }

  @Override
  public double value(int index) {
    return values.applyAsDouble(index);
  }

  @Override
  public boolean joins(int before, int after) {
    return timeMs(after) - timeMs(before) <= reach.between(before, after);
  }
}
