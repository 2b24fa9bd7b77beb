package org.rimebook.desk.series;

import org.rimebook.depth.WireDepths;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;

/** One value a row of the record. */
public final class RecordSeries implements Series {

  private final SeasonRecord record;
  private final Reach reach;
  private final Values values;

  private RecordSeries(SeasonRecord record, Values values) {
    this.record = record;
    this.reach = new Reach(record);
    this.values = values;
  }

  /** A channel, in the unit inside. */
  public static RecordSeries channel(SeasonRecord record, int channel) {
    return new RecordSeries(record, new Values.OfColumn(record.channel(channel)));
  }

  /** A wire's frequency as logged [Hz, or counts], used or not. */
  public static RecordSeries frequency(SeasonRecord record, int wire) {
    return new RecordSeries(record, new Values.OfColumn(record.frequency(wire)));
  }

  /** A wire's depth [mm], used or not. */
  public static RecordSeries depth(SeasonRecord record, WireDepths depths, int wire) {
    return new RecordSeries(record, new Values.OfDepth(depths, wire));
  }

  /** The same without the readings of a wire that aren't used. */
  public RecordSeries used(WireDepths depths, int wire) {
    return new RecordSeries(record, new Values.Used(values, depths, wire));
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
    return values.at(index);
  }

  @Override
  public void copy(int fromIndex, double[] into) {
    values.copy(fromIndex, into);
  }

  @Override
  public boolean joins(int before, int after) {
    return timeMs(after) - timeMs(before) <= reach.between(before, after);
  }

  /** Where values come from: one by one, or many at once, which is far quicker. */
  private interface Values {

    double at(int row);

    void copy(int fromRow, double[] into);

    record OfColumn(Column column) implements Values {
      @Override
      public double at(int row) {
        return column.get(row);
      }

      @Override
      public void copy(int fromRow, double[] into) {
        column.copy(fromRow, into);
      }
    }

    record OfDepth(WireDepths depths, int wire) implements Values {
      @Override
      public double at(int row) {
        return depths.depthMm(wire, row);
      }

      @Override
      public void copy(int fromRow, double[] into) {
        depths.copyDepthMm(wire, fromRow, into);
      }
    }

    record Used(Values all, WireDepths depths, int wire) implements Values {
      @Override
      public double at(int row) {
        return depths.used(wire, row) ? all.at(row) : Double.NaN;
      }

      @Override
      public void copy(int fromRow, double[] into) {
        all.copy(fromRow, into);
        for (int i = 0; i < into.length; i++) {
          if (!depths.used(wire, fromRow + i)) {
            into[i] = Double.NaN;
          }
        }
      }
    }
  }
}
