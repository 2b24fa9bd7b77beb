package org.rimebook.practice;

import java.util.List;
import java.util.Map;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

/**
 * What the sensors beside the wires give.
 *
 * @param weather the weather
 * @param supplyV supply voltage at each reading [V]
 * @param outages by quantity, when the sensor gives nothing
 */
record Channels(Weather weather, double[] supplyV, Map<String, List<Interval>> outages) {

  /** A value in the unit inside; NaN during an outage. */
  double value(String quantity, int index) {
    long stampMs = weather.sampling().stampMs(index);
    if (outages.getOrDefault(quantity, List.of()).stream().anyMatch(o -> o.contains(stampMs))) {
      return Double.NaN;
    }
    return switch (quantity) {
      case Channel.AIR_TEMPERATURE -> weather.airTemperatureDegC(index);
      case Channel.WIND_SPEED -> weather.windMs(index);
      case Channel.SUPPLY_VOLTAGE -> supplyV[index];
      default -> throw new IllegalArgumentException("no model of " + quantity);
    };
  }
}
