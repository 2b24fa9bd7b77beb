package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.practice.Chance;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

/**
 * A supply that is low for a while.
 *
 * @param span while it is low
 * @param byV how far it falls [V]
 * @param noiseHz standard deviation of what that adds to a frequency [Hz]
 * @param lost share of the readings that get lost
 */
record LowSupply(Interval span, double byV, double noiseHz, double lost) {

  private static final double PER_VOLT = 100;

  SeasonRecord on(SeasonRecord record, StationSheet sheet) {
    RecordCopy copy = new RecordCopy(record, sheet);
    int supply = sheet.channel(Channel.SUPPLY_VOLTAGE).map(sheet.channels()::indexOf).orElseThrow();
    List<Column> beside = new ArrayList<>(copy.channels());
    beside.set(supply, lower(record, beside.get(supply)));
    List<Column> frequencies = new ArrayList<>();
    for (int wire = 0; wire < sheet.wires().size(); wire++) {
      frequencies.add(spoilt(record, wire));
    }
    return copy.with(frequencies, beside);
  }

  private Column lower(SeasonRecord record, Column volts) {
    double[] values = new double[record.size()];
    for (int row = 0; row < values.length; row++) {
      double by = span.contains(record.stampMs(row)) ? byV : 0;
      values[row] = StrictMath.rint((volts.get(row) - by) * PER_VOLT) / PER_VOLT;
    }
    return Column.copyOf(values, values.length);
  }

  private Column spoilt(SeasonRecord record, int wire) {
    RandomGenerator chance = Chance.of(span.fromMs(), "low supply/" + wire);
    double[] values = new double[record.size()];
    for (int row = 0; row < values.length; row++) {
      values[row] = record.frequency(wire).get(row);
      if (span.contains(record.stampMs(row))) {
        boolean gone = chance.nextDouble() < lost;
        values[row] = gone ? Double.NaN : values[row] + noiseHz * chance.nextGaussian();
      }
    }
    return Column.copyOf(values, values.length);
  }
}
