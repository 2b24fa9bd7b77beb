package org.rimebook.practice.faults;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.rimebook.station.Channel;
import org.rimebook.station.Gauge;
import org.rimebook.station.StationSheet;

/** Station sheets that say something else. */
final class Sheets {

  private Sheets() {}

  static StationSheet capacity(StationSheet sheet, double capacityMm) {
    Gauge gauge = sheet.gauge();
    return with(
        sheet,
        new Gauge(
            gauge.orificeAreaCm2(),
            OptionalDouble.of(capacityMm),
            gauge.rimHeightM(),
            gauge.windShield()),
        sheet.channels());
  }

  static StationSheet channels(StationSheet sheet, Channel... more) {
    List<Channel> channels = Stream.concat(sheet.channels().stream(), Stream.of(more)).toList();
    return with(sheet, sheet.gauge(), channels);
  }

  private static StationSheet with(StationSheet sheet, Gauge gauge, List<Channel> channels) {
    return new StationSheet(
        sheet.name(),
        sheet.latitudeDeg(),
        sheet.longitudeDeg(),
        sheet.elevationM(),
        sheet.utcOffset(),
        sheet.dayStartsAt(),
        gauge,
        sheet.wires(),
        sheet.layout(),
        channels);
  }
}
