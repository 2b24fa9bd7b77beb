package org.rimebook.practice;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.station.Calibration;
import org.rimebook.station.Channel;
import org.rimebook.station.Gauge;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

/** Station sheets of gauges that don't exist: 200 cm², 600 mm, three wires. */
public final class InventedGauge {

  /** Area of the orifice [cm²]. */
  public static final double ORIFICE_AREA_CM2 = 200;

  private static final double CAPACITY_MM = 600;

  private InventedGauge() {}

  /**
   * Where an invented gauge stands.
   *
   * @param name name of the station
   * @param latitudeDeg latitude [degrees north]
   * @param longitudeDeg longitude [degrees east]
   * @param elevationM elevation [m]
   * @param utcOffset station time
   */
  public record Place(
      String name,
      double latitudeDeg,
      double longitudeDeg,
      double elevationM,
      ZoneOffset utcOffset) {}

  /**
   * The sheet of a gauge with three wires, air temperature, wind at 10 m and supply voltage.
   *
   * @param place where it stands
   * @param dayStartsAt start of the climatological day
   * @param rimHeightM height of the orifice [m]
   * @param shield what stands around it
   * @param wires its wires
   */
  public static StationSheet sheet(
      Place place, LocalTime dayStartsAt, double rimHeightM, WindShield shield, List<Wire> wires) {
    return new StationSheet(
        place.name(),
        OptionalDouble.of(place.latitudeDeg()),
        OptionalDouble.of(place.longitudeDeg()),
        OptionalDouble.of(place.elevationM()),
        place.utcOffset(),
        dayStartsAt,
        new Gauge(
            ORIFICE_AREA_CM2,
            OptionalDouble.of(CAPACITY_MM),
            OptionalDouble.of(rimHeightM),
            shield),
        wires,
        layout(),
        channels());
  }

  /** Three wires by name, each within a few percent of an ideal string (a = 2 f0 b). */
  public static List<Wire> wires(String first, String second, String third) {
    return List.of(
        wire(first, 1, calibration(0.01709, 8.2e-6, 1050.1)),
        wire(second, 2, calibration(0.01791, 7.9e-6, 1122.6)),
        wire(third, 3, calibration(0.01682, 8.6e-6, 987.4)));
  }

  /** The same wire with another calibration from an instant on: it was replaced. */
  static Wire replaced(Wire wire, Instant from) {
    List<Calibration> calibrations = new ArrayList<>(wire.calibrations());
    calibrations.add(new Calibration(Optional.of(from), 0.01748, 8.05e-6, 1078.9));
    return new Wire(wire.name(), wire.frequencyColumn(), wire.lead(), calibrations);
  }

  private static Calibration calibration(double aCmPerHz, double bCmPerHz2, double f0Hz) {
    return new Calibration(Optional.empty(), aCmPerHz, bCmPerHz2, f0Hz);
  }

  private static Wire wire(String name, int number, Calibration calibration) {
    return new Wire(name, "f" + number + "_hz", Optional.empty(), List.of(calibration));
  }

  private static RecordLayout layout() {
    return new RecordLayout(
        List.of("records/*.csv.gz"),
        "time",
        List.of("NAN"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        RecordLayout.TimeIs.END,
        RecordLayout.FrequencyKind.HERTZ,
        OptionalDouble.empty());
  }

  private static List<Channel> channels() {
    return List.of(
        channel(Channel.AIR_TEMPERATURE, "air_temp_c", Unit.DEG_C, OptionalDouble.empty()),
        channel(Channel.WIND_SPEED, "wind_ms", Unit.METRE_PER_SECOND, OptionalDouble.of(10)),
        channel(Channel.SUPPLY_VOLTAGE, "battery_v", Unit.VOLT, OptionalDouble.empty()));
  }

  private static Channel channel(
      String quantity, String column, Unit unit, OptionalDouble heightM) {
    return new Channel(quantity, column, unit, heightM);
  }
}
