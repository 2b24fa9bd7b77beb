package org.rimebook.practice;

import de.siegmar.fastcsv.writer.LineDelimiter;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Entry.Header;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;

/** A winter on a windy ridge, read every minute: the wind pumps the bucket, one wire creeps. */
final class WindyRidge {

  private static final long SEED = 20_241_101L;
  private static final int CREEPING_WIRE = 2;
  private static final StationClock CLOCK = new StationClock(ZoneOffset.ofHours(1));
  private static final Interval SEASON = CLOCK.span("2024-11-01T06:00", "2025-04-01T06:00");
  private static final Interval RIME = CLOCK.span("2024-12-06T02:00", "2024-12-07T09:00");
  private static final Interval INSPECTION = CLOCK.span("2025-01-16T11:00", "2025-01-16T11:40");
  private static final Interval CREEP = CLOCK.span("2025-02-03T00:00", "2025-04-02T00:00");
  private static final Interval DRY = CLOCK.span("2025-03-10T06:00", "2025-03-12T06:00");

  private WindyRidge() {}

  static PracticeSeason season() {
    Weather weather =
        Weather.simulated(
            Sampling.every(Duration.ofMinutes(1), SEASON),
            CLOCK.offset(),
            new Climate(0, 7, 2.5, 4, 7.5),
            SEED);
    SimulatedSeason season =
        new SeasonBuilder(sheet(), weather, SEED)
            .fell(Storms.simulated(weather, new StormClimate(5, 10, 1.3, 0.15), SEED).without(DRY))
            .charge(Visit.depthMm(3.6, InventedGauge.ORIFICE_AREA_CM2))
            .depth(new Tilt(0.006, 80))
            .depth(new TemperatureCoefficient(-4e-5, 1e-5, 20, 0))
            .depth(new SunDrift(0.4, 1_800_000))
            .depth(new WindNoise(0.03, 0.25, 0.5, 240_000))
            .depth(new DriftingWire(CREEPING_WIRE, CREEP, 0.12))
            .depth(new Rattle(RIME, 2.5))
            .depth(new Rattle(INSPECTION, 3))
            .frequency(new Spikes(0.05, 150))
            .frequency(new Quantisation(0.1))
            .build();
    return new PracticeSeason(
        season,
        new LoggerHabits(';', ',', LineDelimiter.CRLF, 1, false),
        LoggerFaults.NONE,
        entries(),
        note());
  }

  private static StationSheet sheet() {
    return InventedGauge.sheet(
        new InventedGauge.Place("Kestrel Saddle", 60.9, 8.1, 1180, CLOCK.offset()),
        LocalTime.of(6, 0),
        3.5,
        WindShield.UNSHIELDED,
        InventedGauge.wires("red", "white", "blue"));
  }

  private static List<Entry> entries() {
    return List.of(
        new Entry.BadInterval(
            new Header(
                "wr-1",
                "2024-12-09T07:50:00+01:00",
                "tl",
                "Rime from the rim rubs on the bucket; gone when the wind turned."),
            RIME,
            Set.of(),
            BadReason.OBSTRUCTION),
        new Entry.ServiceVisit(
            new Header("wr-2", "2025-01-16T15:20:00+01:00", "tl", "Rim brushed free of rime."),
            INSPECTION,
            List.of(VisitAction.INSPECTED),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        new Entry.BadInterval(
            new Header(
                "wr-3", "2025-04-02T10:00:00+02:00", "tl", "Blue climbs away from the others."),
            CREEP,
            Set.of("blue"),
            BadReason.WIRE_FAULT),
        new Entry.Remark(
            new Header("wr-4", "2025-04-02T10:04:00+02:00", "tl", "Clear, ridge free of cloud."),
            Optional.of(DRY)));
  }

  private static PracticeSeason.Note note() {
    return new PracticeSeason.Note(
        "Windy ridge: Kestrel Saddle, 2024-25",
        "A winter on an open ridge, read every minute by a logger with a decimal comma. The wind"
            + " pumps the bucket: single readings scatter by tenths of a millimetre, partly alike"
            + " on all wires.",
        List.of(
            "Noise grows with the square of the wind, 0.25 mm at 10 m/s; 0.1 Hz is the finest"
                + " step of the counter.",
            "Rime rubs on the bucket from 2024-12-06 02:00 to 2024-12-07 09:00.",
            "Visit on 2025-01-16, 11:00 to 11:40; the bucket stays on.",
            "Wire blue creeps by 0.12 mm/d from 2025-02-03 to the end.",
            "Single spikes, about one wire-reading in 20 days each."));
  }
}
