package org.rimebook.record;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.GZIPOutputStream;
import org.rimebook.station.Calibration;
import org.rimebook.station.Channel;
import org.rimebook.station.Gauge;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

/** A season folder written by a test: two wires, f1_hz and f2_hz, and air_temp_c, at -07:00. */
final class Season {

  static final String HEADER = "time,f1_hz,f2_hz,air_temp_c\n";

  private final Path folder;
  private RecordLayout layout =
      new RecordLayout(
          List.of("records/*.csv"),
          "time",
          List.of("NAN", "-9999"),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          RecordLayout.TimeIs.END,
          RecordLayout.FrequencyKind.HERTZ,
          OptionalDouble.empty());
  private Unit temperatureUnit = Unit.DEG_C;
  private String temperatureColumn = "air_temp_c";

  private Season(Path folder) {
    this.folder = folder;
  }

  static Season in(Path folder) throws IOException {
    Files.createDirectories(folder.resolve("records"));
    return new Season(folder);
  }

  /** A season with one file, records/a.csv. */
  static Season of(Path folder, String text) throws IOException {
    return in(folder).file("a.csv", text);
  }

  Path folder() {
    return folder;
  }

  Season file(String name, String text) throws IOException {
    return bytes(name, text.getBytes(StandardCharsets.UTF_8));
  }

  Season file(String name, String text, Charset charset) throws IOException {
    return bytes(name, text.getBytes(charset));
  }

  Season bytes(String name, byte[] bytes) throws IOException {
    Files.write(folder.resolve("records").resolve(name), bytes);
    return this;
  }

  static byte[] gzip(String text) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return packed.toByteArray();
  }

  Season timeFormat(String format) {
    layout = with(layout.delimiter(), layout.decimal(), Optional.of(format), layout.timeIs());
    return this;
  }

  Season delimiter(char delimiter) {
    layout = with(Optional.of(delimiter), layout.decimal(), layout.timeFormat(), layout.timeIs());
    return this;
  }

  Season decimal(char decimal) {
    layout = with(layout.delimiter(), Optional.of(decimal), layout.timeFormat(), layout.timeIs());
    return this;
  }

  Season stampsAreStarts() {
    layout =
        with(layout.delimiter(), layout.decimal(), layout.timeFormat(), RecordLayout.TimeIs.START);
    return this;
  }

  Season temperatureIn(Unit unit) {
    temperatureUnit = unit;
    return this;
  }

  Season temperatureColumn(String column) {
    temperatureColumn = column;
    return this;
  }

  private RecordLayout with(
      Optional<Character> delimiter,
      Optional<Character> decimal,
      Optional<String> timeFormat,
      RecordLayout.TimeIs timeIs) {
    return new RecordLayout(
        layout.files(),
        layout.timeColumn(),
        layout.missing(),
        delimiter,
        decimal,
        timeFormat,
        timeIs,
        layout.frequencyKind(),
        layout.gateS());
  }

  SeasonRecord read() throws IOException, InputException {
    return RecordReader.read(folder, sheet(), Progress.NONE);
  }

  SeasonRecord readSoon() throws IOException, InputException {
    return RecordReader.readSoon(folder, sheet(), Progress.NONE);
  }

  private StationSheet sheet() {
    List<Calibration> calibration =
        List.of(new Calibration(Optional.empty(), 0.0172, 8.2e-6, 1050));
    List<Wire> wires = new ArrayList<>();
    for (int wire = 1; wire <= 2; wire++) {
      wires.add(new Wire("w" + wire, "f" + wire + "_hz", Optional.empty(), calibration));
    }
    return new StationSheet(
        "Test Ridge",
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        ZoneOffset.ofHours(-7),
        LocalTime.MIDNIGHT,
        new Gauge(200, OptionalDouble.empty(), OptionalDouble.empty(), WindShield.OTHER),
        wires,
        layout,
        List.of(
            new Channel(
                Channel.AIR_TEMPERATURE,
                temperatureColumn,
                temperatureUnit,
                OptionalDouble.empty())));
  }

  /** The rows of a record in words: stamp in UTC, frequencies, temperature. */
  static List<String> rows(SeasonRecord record) {
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < record.size(); row++) {
      rows.add(
          Instant.ofEpochMilli(record.stampMs(row))
              + " "
              + record.frequency(0).get(row)
              + " "
              + record.frequency(1).get(row)
              + " "
              + record.channel(0).get(row));
    }
    return rows;
  }

  /** Everything set aside: file, lines, reason. */
  static List<String> setAside(SeasonRecord record) {
    List<String> all = new ArrayList<>();
    for (FileAccount file : record.provenance().files()) {
      for (SetAside run : file.setAside()) {
        all.add(file.file() + " " + run.firstLine() + "-" + run.lastLine() + " " + run.reason());
      }
    }
    return all;
  }

  /** Ten-minute rows from a day and hour in station time. */
  static String tenMinutes(String day, int firstHour, int rows) {
    StringBuilder text = new StringBuilder();
    Instant start = Instant.parse(day + "T00:00:00Z").plusSeconds(firstHour * 3600L);
    for (int row = 0; row < rows; row++) {
      String stamp = start.plusSeconds(600L * row).toString().replace("T", " ").replace("Z", "");
      text.append(stamp).append(",").append(1500 + row).append(".5,1600,-3\n");
    }
    return text.toString();
  }
}
