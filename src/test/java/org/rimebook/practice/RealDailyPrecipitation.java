package org.rimebook.practice;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;

/**
 * A real winter of daily amounts in an invented gauge: NOAA daily precipitation, October 2012 to
 * March 2013, from the open data package vega-datasets 3.2.1 ({@code vega-datasets/README.md} in
 * the test resources). Each day's amount falls in a few storms drawn inside that day and adds up to
 * it exactly; station, weather and everything finer than a day are invented.
 */
public final class RealDailyPrecipitation {

  private static final Path FILE = Path.of("src/test/resources/vega-datasets/seattle-weather.csv");
  private static final LocalDate FIRST_DAY = LocalDate.of(2012, 10, 1);
  private static final LocalDate DAY_AFTER_LAST = LocalDate.of(2013, 4, 1);
  private static final StationClock CLOCK = new StationClock(ZoneOffset.ofHours(-8));
  private static final long MINUTE_MS = 60_000L;
  private static final int MINUTES_PER_DAY = 1440;
  private static final int MOST_STORMS_A_DAY = 4;
  private static final double CHARGE_L = 2;

  /** Dry days on which the bucket is emptied, since the winter brings more than it holds. */
  private static final List<Interval> VISITS =
      List.of(
          CLOCK.span("2012-11-25T10:00", "2012-11-25T11:00"),
          CLOCK.span("2013-01-15T10:00", "2013-01-15T11:00"));

  private RealDailyPrecipitation() {}

  /** The amounts of the winter's days [mm]. */
  public static SortedMap<LocalDate, Double> amountsMm() throws IOException {
    SortedMap<LocalDate, Double> amounts = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().ofNamedCsvRecord(FILE, StandardCharsets.UTF_8)) {
      for (NamedCsvRecord day : csv) {
        LocalDate date = LocalDate.parse(day.getField("date"));
        if (!date.isBefore(FIRST_DAY) && date.isBefore(DAY_AFTER_LAST)) {
          amounts.put(date, Double.parseDouble(day.getField("precipitation")));
        }
      }
    }
    return amounts;
  }

  /** The winter in a gauge read every five minutes, with noise, sun, temperature and two visits. */
  public static PracticeSeason season(long seed) throws IOException {
    StationSheet sheet =
        InventedGauge.sheet(
            new InventedGauge.Place("Slate Harbour", 47.6, -122.3, 60, CLOCK.offset()),
            LocalTime.MIDNIGHT,
            1.5,
            WindShield.SINGLE_ALTER,
            InventedGauge.wires("north", "east", "west"));
    Interval span =
        new Interval(
            FIRST_DAY.atStartOfDay().toInstant(CLOCK.offset()).toEpochMilli(),
            DAY_AFTER_LAST.atStartOfDay().toInstant(CLOCK.offset()).toEpochMilli());
    Sampling sampling = Sampling.every(Duration.ofMinutes(5), span);
    Weather weather =
        Weather.simulated(sampling, CLOCK.offset(), new Climate(11, 7, 3.5, 2.5, 3), seed);
    double chargeMm = Visit.depthMm(CHARGE_L, InventedGauge.ORIFICE_AREA_CM2);
    SeasonBuilder builder =
        new SeasonBuilder(sheet, weather, seed)
            .fell(precipitation(seed))
            .charge(chargeMm)
            .depth(new Tilt(0.005, 140))
            .depth(new TemperatureCoefficient(-4e-5, 1e-5, 20, 0))
            .depth(new SunDrift(0.3, 1_800_000))
            .depth(new WindNoise(0.02, 0.2, 0.4, 300_000))
            .frequency(new Quantisation(0.01));
    VISITS.forEach(visit -> builder.visit(new Visit(visit, true, chargeMm)));
    return new PracticeSeason(
        builder.build(),
        new LoggerHabits(',', '.', LineDelimiter.LF, 2, false),
        LoggerFaults.NONE,
        entries(),
        new PracticeSeason.Note("Slate Harbour", "Real days, invented hours.", List.of()));
  }

  /** What falls: each day's amount in storms inside that day. */
  public static Precipitation precipitation(long seed) throws IOException {
    RandomGenerator chance = Chance.of(seed, "real days");
    List<Pulse> pulses = new ArrayList<>();
    for (Map.Entry<LocalDate, Double> day : amountsMm().entrySet()) {
      if (day.getValue() > 0) {
        pulses.addAll(storms(day.getKey(), day.getValue(), chance));
      }
    }
    return Precipitation.of(pulses);
  }

  private static List<Pulse> storms(LocalDate date, double amountMm, RandomGenerator chance) {
    long midnightMs = date.atStartOfDay().toInstant(CLOCK.offset()).toEpochMilli();
    int count = 1 + chance.nextInt(MOST_STORMS_A_DAY);
    double leftMm = amountMm;
    List<Pulse> storms = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      int minutes = 20 + chance.nextInt(400);
      long fromMs = midnightMs + MINUTE_MS * chance.nextInt(MINUTES_PER_DAY - minutes);
      double mm = i == count ? leftMm : leftMm * chance.nextDouble();
      storms.add(new Pulse(new Interval(fromMs, fromMs + minutes * MINUTE_MS), mm));
      leftMm -= mm;
    }
    return storms;
  }

  private static List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    for (Interval visit : VISITS) {
      String id = "sh-" + (entries.size() + 1);
      String at = TruthTables.time(visit.to(), CLOCK.offset());
      entries.add(
          new Entry.ServiceVisit(
              new Entry.Header(id, at, "jd", ""),
              visit,
              List.of(VisitAction.EMPTIED, VisitAction.RECHARGED),
              OptionalDouble.of(CHARGE_L),
              OptionalDouble.empty()));
    }
    return entries;
  }
}
