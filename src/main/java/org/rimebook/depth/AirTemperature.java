package org.rimebook.depth;

import java.util.Optional;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;
import org.rimebook.station.StationSheet;

/** What the air temperature does to depths. */
public final class AirTemperature {

  /**
   * Temperature at which a depth is right by its certificate [°C]. A sheet doesn't tell it:
   * anything from a cold workshop to a laboratory, from 0 to 20 °C, whose middle is taken.
   */
  public static final double CALIBRATED_DEG_C = 10;

  /** Air is never colder near the ground [°C]; a sensor that says so is at fault. */
  public static final double LEAST_DEG_C = -90;

  /** Air is never warmer near the ground [°C]. */
  public static final double MOST_DEG_C = 60;

  private AirTemperature() {}

  /**
   * How far the air is above the temperature depths are right at, row by row [°C]; where it isn't
   * known on a straight line of time between what is known. Empty when it isn't measured at all.
   */
  static Optional<double[]> aboveCalibrated(SeasonRecord record, StationSheet sheet) {
    return sheet
        .channelIndex(Channel.AIR_TEMPERATURE)
        .map(record::channel)
        .flatMap(column -> filled(record, column));
  }

  private static Optional<double[]> filled(SeasonRecord record, Column column) {
    double[] above = new double[record.size()];
    int last = -1;
    for (int row = 0; row < above.length; row++) {
      double degC = column.get(row);
      if (degC >= LEAST_DEG_C && degC <= MOST_DEG_C) {
        above[row] = degC - CALIBRATED_DEG_C;
        bridge(record, above, last, row);
        last = row;
      }
    }
    bridge(record, above, last, above.length);
    return last < 0 ? Optional.empty() : Optional.of(above);
  }

  /** Fills the rows between two known ones; −1 and the size stand for none. */
  private static void bridge(SeasonRecord record, double[] values, int from, int to) {
    for (int row = from + 1; row < to; row++) {
      if (from < 0) {
        values[row] = to < values.length ? values[to] : 0;
      } else if (to == values.length) {
        values[row] = values[from];
      } else {
        double since = record.stampMs(row) - record.stampMs(from);
        double share = since / (record.stampMs(to) - record.stampMs(from));
        values[row] = values[from] + share * (values[to] - values[from]);
      }
    }
  }
}
