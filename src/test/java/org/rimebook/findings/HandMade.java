package org.rimebook.findings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.depth.ConvertedWires;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.RecordReader;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Calibration;
import org.rimebook.station.Channel;
import org.rimebook.station.Gauge;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

/**
 * A season whose one file a test prescribes line by line and which is read as files are read. Hours
 * count from 2025-01-10T00:00 station time (UTC−7), which is mean solar time.
 */
final class HandMade {

  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-7);
  private static final Instant START =
      OffsetDateTime.parse("2025-01-10T00:00:00-07:00").toInstant();
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

  private final double minutes;
  private final double hours;
  private final List<Entry> entries = new ArrayList<>();
  private DoubleUnaryOperator levelMm = hour -> 150;
  private DoubleUnaryOperator airDegC = hour -> -3;
  private DoubleUnaryOperator supplyV = hour -> 12.5;
  private DoubleUnaryOperator clockH = hour -> hour;
  private DoubleUnaryOperator noiseMm = hour -> 0.03;
  private ByWire apartMm = (wire, hour) -> 0;
  private ByWire insteadMm = (wire, hour) -> Double.NaN;
  private Optional<DoubleUnaryOperator> windMs = Optional.empty();
  private List<Wire> hung;
  private double exchangedFromH = Double.POSITIVE_INFINITY;
  private int[] exchanged = {};
  private DoublePredicate silent = hour -> false;
  private boolean channels = true;

  private HandMade(double minutes, double days, int wires) {
    this.minutes = minutes;
    this.hours = 24 * days;
    this.hung = IntStream.range(0, wires).mapToObj(HandMade::wire).toList();
  }

  /** A gauge of three wires read every so many minutes for so many days. */
  static HandMade every(double minutes, double days) {
    return new HandMade(minutes, days, 3);
  }

  static HandMade ofOneWire(double minutes, double days) {
    return new HandMade(minutes, days, 1);
  }

  HandMade level(DoubleUnaryOperator mm) {
    levelMm = mm;
    return this;
  }

  HandMade air(DoubleUnaryOperator degC) {
    airDegC = degC;
    return this;
  }

  HandMade supply(DoubleUnaryOperator volts) {
    supplyV = volts;
    return this;
  }

  /** What the logger's clock shows at an hour [h]. */
  HandMade clock(DoubleUnaryOperator shownH) {
    clockH = shownH;
    return this;
  }

  HandMade noise(DoubleUnaryOperator mm) {
    noiseMm = mm;
    return this;
  }

  HandMade silent(DoublePredicate when) {
    silent = when;
    return this;
  }

  /** Something of a wire at an hour. */
  interface ByWire {

    double at(int wire, double hour);
  }

  /** What each wire shows beyond the level [mm]. */
  HandMade apart(ByWire mm) {
    apartMm = mm;
    return this;
  }

  /** What each wire shows instead, without noise [mm]; NaN where it shows the level. */
  HandMade instead(ByWire mm) {
    insteadMm = mm;
    return this;
  }

  /** Measures the wind too [m/s]. */
  HandMade wind(DoubleUnaryOperator ms) {
    windMs = Optional.of(ms);
    return this;
  }

  /** Other names for the wires. */
  HandMade named(String... names) {
    hung =
        IntStream.range(0, hung.size())
            .mapToObj(i -> wire(i, names[i], hung.get(i).calibrations().get(0)))
            .toList();
    return this;
  }

  /** Other calibrations, which are right. */
  HandMade calibrated(Calibration... calibrations) {
    hung =
        IntStream.range(0, hung.size())
            .mapToObj(i -> wire(i, hung.get(i).name(), calibrations[i]))
            .toList();
    return this;
  }

  /** From an hour on each column has the frequency of the wire of that index. */
  HandMade exchangedFrom(double hour, int... order) {
    exchangedFromH = hour;
    exchanged = order.clone();
    return this;
  }

  HandMade withoutChannels() {
    channels = false;
    return this;
  }

  HandMade entry(Entry entry) {
    entries.add(entry);
    return this;
  }

  static Entry.Header header(String id) {
    return new Entry.Header(id, "2025-02-01T12:00:00-07:00", "ab", "");
  }

  static long ms(double hour) {
    return START.toEpochMilli() + Math.round(hour * 3_600_000);
  }

  static Interval span(double fromHour, double toHour) {
    return new Interval(ms(fromHour), ms(toHour));
  }

  /** An hour of what a span starts and ends with. */
  static double hour(long ms) {
    return (ms - START.toEpochMilli()) / 3_600_000.0;
  }

  /** What a check finds. */
  List<Finding> found(Check check) {
    return check.look(scene());
  }

  /** The season. */
  Scene scene() {
    StationSheet sheet = sheet();
    return Scene.of(
        new RecordFacts(ConvertedWires.of(record(sheet), sheet, Progress.NONE)),
        new Notebook(entries, List.of()));
  }

  private SeasonRecord record(StationSheet sheet) {
    try {
      Path folder = Files.createTempDirectory("hand-made");
      Path file = Files.createDirectory(folder.resolve("records")).resolve("a.csv");
      Files.write(file, lines(sheet));
      SeasonRecord record = RecordReader.read(folder, sheet, Progress.NONE);
      Files.delete(file);
      Files.delete(file.getParent());
      Files.delete(folder);
      return record;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }

  private double shownMm(int wire, double hour, Random random) {
    double read =
        levelMm.applyAsDouble(hour)
            + apartMm.at(wire, hour)
            + noiseMm.applyAsDouble(hour) * random.nextGaussian();
    double shown = insteadMm.at(wire, hour);
    return Double.isNaN(shown) ? read : shown;
  }

  private List<String> lines(StationSheet sheet) {
    Random random = new Random(20250110);
    List<String> lines = new ArrayList<>();
    StringBuilder head = new StringBuilder("time");
    sheet.wires().forEach(wire -> head.append(',').append(wire.frequencyColumn()));
    sheet.channels().forEach(channel -> head.append(',').append(channel.column()));
    lines.add(head.toString());
    int rows = (int) Math.round(hours * 60 / minutes);
    for (int i = 0; i <= rows; i++) {
      double hour = i * minutes / 60;
      StringBuilder line =
          new StringBuilder(
              Instant.ofEpochMilli(ms(clockH.applyAsDouble(hour))).atOffset(OFFSET).format(STAMP));
      for (int column = 0; column < sheet.wires().size(); column++) {
        int wire = hour >= exchangedFromH ? exchanged[column] : column;
        double mm = shownMm(wire, hour, random);
        CalibrationCurve curve = CalibrationCurve.of(sheet.wires().get(wire).calibrations().get(0));
        line.append(
            Double.isNaN(mm) ? "," : String.format(Locale.ROOT, ",%.3f", curve.frequencyHz(mm)));
      }
      if (channels) {
        line.append(
            String.format(
                Locale.ROOT,
                ",%.2f,%.2f",
                airDegC.applyAsDouble(hour),
                supplyV.applyAsDouble(hour)));
        windMs.ifPresent(
            ms -> line.append(String.format(Locale.ROOT, ",%.2f", ms.applyAsDouble(hour))));
      }
      if (!silent.test(hour)) {
        lines.add(line.toString());
      }
    }
    return lines;
  }

  private StationSheet sheet() {
    RecordLayout layout =
        new RecordLayout(
            List.of("records/*.csv"),
            "time",
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            RecordLayout.TimeIs.END,
            RecordLayout.FrequencyKind.HERTZ,
            OptionalDouble.empty());
    List<Channel> beside =
        List.of(
                new Channel(Channel.AIR_TEMPERATURE, "t", Unit.DEG_C, OptionalDouble.empty()),
                new Channel(Channel.SUPPLY_VOLTAGE, "v", Unit.VOLT, OptionalDouble.empty()),
                new Channel(Channel.WIND_SPEED, "u", Unit.METRE_PER_SECOND, OptionalDouble.of(10)))
            .subList(0, windMs.isPresent() ? 3 : 2);
    return new StationSheet(
        "Invented Ridge",
        OptionalDouble.of(46),
        OptionalDouble.of(-105),
        OptionalDouble.empty(),
        OFFSET,
        LocalTime.MIDNIGHT,
        new Gauge(200, OptionalDouble.of(1000), OptionalDouble.of(2), WindShield.SINGLE_ALTER),
        hung,
        layout,
        channels ? beside : List.of());
  }

  private static Wire wire(int index) {
    return wire(index, "w" + index, taut(1050 + 6 * index));
  }

  private static Wire wire(int index, String name, Calibration calibration) {
    return new Wire(name, "f" + index, Optional.empty(), List.of(calibration));
  }

  /** A taut wire's calibration. */
  static Calibration taut(double f0) {
    return new Calibration(Optional.empty(), 0.0172, 0.0172 / (2 * f0), f0);
  }
}
