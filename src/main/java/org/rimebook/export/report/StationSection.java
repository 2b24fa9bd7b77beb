package org.rimebook.export.report;

import static org.rimebook.station.Words.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.export.figure.CalibrationFigure;
import org.rimebook.station.Calibration;
import org.rimebook.station.Channel;
import org.rimebook.station.Gauge;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/** The station sheet and the calibrations with their curves. */
final class StationSection implements ReportSection {

  private static final double CURVES_PT = 230;

  private final ReportData data;

  StationSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Station and calibrations";
  }

  @Override
  public void write(Flow flow) {
    flow.table(facts());
    flow.heading2("Measured beside the wires");
    flow.table(channels());
    flow.heading2("Calibrations");
    flow.paragraph(
        "Depth of the whole bucket by each wire: P = A(f−f0) + B(f−f0)², P in cm of water over the"
            + " orifice. An ideal taut wire has "
            + ReportWords.unbroken("A/(2 f0 B) = 1."));
    flow.table(calibrations());
    data.result().calibrations().alerts().forEach(flow::paragraph);
    flow.figure(
        CalibrationFigure.of(data.result(), flow.width(), CURVES_PT),
        "Depth rises with frequency along one curve for each calibration.",
        "Calibration curves up to the gauge's capacity; heavy where this season's readings lie.");
  }

  private Table facts() {
    StationSheet sheet = data.sheet();
    Gauge gauge = sheet.gauge();
    List<String> place = new ArrayList<>();
    sheet.latitudeDeg().ifPresent(v -> place.add("latitude " + ReportWords.number(v, 4) + "°"));
    sheet.longitudeDeg().ifPresent(v -> place.add("longitude " + ReportWords.number(v, 4) + "°"));
    sheet.elevationM().ifPresent(v -> place.add(ReportWords.number(v, 0) + " m above sea level"));
    Table.Builder table =
        new Table.Builder()
            .words("Station")
            .words(sheet.name())
            .row("Place", place.isEmpty() ? "not given" : String.join(", ", place))
            .row(
                "Time",
                data.words().zone() + ", no summer time; days start at " + sheet.dayStartsAt())
            .row("Orifice", ReportWords.number(gauge.orificeAreaCm2(), 1) + " cm²")
            .row("Capacity", given(gauge.capacityMm(), 0, "mm"))
            .row("Height of the orifice", given(gauge.rimHeightM(), 2, "m above ground"))
            .row("Wind shield", gauge.windShield().code());
    sheet.wires().stream()
        .filter(wire -> wire.temperaturePerDegC().isPresent())
        .forEach(wire -> table.row("Temperature, wire " + wire.name(), stated(wire)));
    return table.done();
  }

  private static String stated(Wire wire) {
    double ppm = 1e6 * wire.temperaturePerDegC().orElse(0);
    return ppm == 0
        ? "nothing is taken off, as stated by hand"
        : ReportWords.number(ppm, 1) + " ppm of the depth a °C is taken off, as stated by hand";
  }

  private static String given(OptionalDouble value, int decimals, String unit) {
    return value.isPresent()
        ? ReportWords.number(value.getAsDouble(), decimals) + " " + unit
        : "not given";
  }

  private Table channels() {
    Table.Builder table =
        new Table.Builder()
            .words("Quantity")
            .words("Column")
            .words("Logged in")
            .figures("Height m");
    for (Channel channel : data.sheet().channels()) {
      table.row(
          channel.quantity().replace('_', ' '),
          channel.column(),
          channel.unit().symbol(),
          data.words().mm(channel.heightM(), 1));
    }
    return table.done();
  }

  private Table calibrations() {
    Table.Builder table =
        new Table.Builder()
            .words("Wire")
            .words("Column")
            .words("From")
            .figures("A cm/Hz")
            .figures("B cm/Hz²")
            .figures("f0 Hz")
            .figures(ReportWords.unbroken("A/(2 f0 B)"));
    for (Wire wire : data.sheet().wires()) {
      for (Calibration calibration : wire.calibrations()) {
        double ratio = CalibrationCurve.of(calibration).stringRatio();
        table.row(
            wire.name(),
            wire.frequencyColumn(),
            calibration
                .from()
                .map(from -> data.words().time(from.toEpochMilli()))
                .orElse("the start"),
            plain(calibration.aCmPerHz()),
            plain(calibration.bCmPerHz2()),
            plain(calibration.f0Hz()),
            Double.isFinite(ratio) ? text("%.3f", ratio) : ReportWords.NONE);
      }
    }
    return table.done();
  }

  /** All its figures, without a power of ten. */
  private static String plain(double value) {
    return BigDecimal.valueOf(value).toPlainString().replace('-', '−');
  }
}
