package org.rimebook.station;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The station sheet: everything that is known about the gauge and its record before looking at it.
 *
 * @param name name of the station
 * @param latitudeDeg latitude [degrees north]
 * @param longitudeDeg longitude [degrees east]
 * @param elevationM elevation [m]
 * @param utcOffset station time, fixed, no summer time
 * @param dayStartsAt boundary of the climatological day, in station time
 * @param gauge the gauge
 * @param wires at least one, in the order of the sheet
 * @param layout layout of the record
 * @param channels quantities beside the wires
 */
public record StationSheet(
    String name,
    OptionalDouble latitudeDeg,
    OptionalDouble longitudeDeg,
    OptionalDouble elevationM,
    ZoneOffset utcOffset,
    LocalTime dayStartsAt,
    Gauge gauge,
    List<Wire> wires,
    RecordLayout layout,
    List<Channel> channels) {

  /** Value of the member {@code format} this version reads and writes. */
  public static final String FORMAT = "rimebook-station/1";

  public StationSheet {
    wires = List.copyOf(wires);
    channels = List.copyOf(channels);
  }

  /** The same station with other wires. */
  public StationSheet withWires(List<Wire> others) {
    return new StationSheet(
        name,
        latitudeDeg,
        longitudeDeg,
        elevationM,
        utcOffset,
        dayStartsAt,
        gauge,
        others,
        layout,
        channels);
  }

  /** Whether every wire states its temperature coefficient, so that none is to be learnt. */
  public boolean statesTemperature() {
    return wires.stream().allMatch(wire -> wire.temperaturePerDegC().isPresent());
  }

  /**
   * Mean over the wires of the temperature coefficients they state and that have an effect, those
   * that state none counting as 0 [1/°C].
   */
  public double statedPerDegC() {
    return channel(Channel.AIR_TEMPERATURE).isEmpty()
        ? 0
        : wires.stream().mapToDouble(w -> w.temperaturePerDegC().orElse(0)).average().orElse(0);
  }

  /** The first channel of a quantity. */
  public Optional<Channel> channel(String quantity) {
    return channelIndex(quantity).map(channels::get);
  }

  /** The index of the first channel of a quantity, among the channels and in the record. */
  public Optional<Integer> channelIndex(String quantity) {
    for (int i = 0; i < channels.size(); i++) {
      if (channels.get(i).quantity().equals(quantity)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }
}
