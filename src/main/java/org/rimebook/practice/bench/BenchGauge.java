package org.rimebook.practice.bench;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.practice.InventedGauge;
import org.rimebook.station.Calibration;
import org.rimebook.station.Gauge;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

/** Gauges for the bench: 200 cm², a bucket of 1000 mm, three wires, each gauge drawn anew. */
final class BenchGauge {

  private static final double CAPACITY_MM = 1000;

  private BenchGauge() {}

  static StationSheet drawn(Draws draws) {
    ZoneOffset offset = ZoneOffset.ofHours(draws.below(13) - 8);
    InventedGauge.Place place =
        new InventedGauge.Place(
            "Bench", draws.between(42, 64), 15.0 * offset.getTotalSeconds() / 3600, 900, offset);
    StationSheet sheet =
        InventedGauge.sheet(
            place,
            draws.oneOf(List.of(LocalTime.MIDNIGHT, LocalTime.of(6, 0), LocalTime.of(8, 0))),
            2,
            WindShield.SINGLE_ALTER,
            wires(draws));
    return new StationSheet(
        sheet.name(),
        sheet.latitudeDeg(),
        sheet.longitudeDeg(),
        sheet.elevationM(),
        sheet.utcOffset(),
        sheet.dayStartsAt(),
        new Gauge(
            InventedGauge.ORIFICE_AREA_CM2,
            OptionalDouble.of(CAPACITY_MM),
            sheet.gauge().rimHeightM(),
            sheet.gauge().windShield()),
        sheet.wires(),
        sheet.layout(),
        sheet.channels());
  }

  /** Each within a few percent of an ideal string (a = 2 f0 b). */
  private static List<Wire> wires(Draws draws) {
    List<Wire> wires = new ArrayList<>();
    for (Wire wire : InventedGauge.wires("north", "southeast", "southwest")) {
      double f0Hz = draws.between(900, 1200);
      double b = draws.between(7.2e-6, 9.2e-6);
      double a = 2 * f0Hz * b * draws.between(0.97, 1.03);
      Calibration calibration = new Calibration(Optional.empty(), a, b, f0Hz);
      wires.add(new Wire(wire.name(), wire.frequencyColumn(), wire.lead(), List.of(calibration)));
    }
    return wires;
  }
}
