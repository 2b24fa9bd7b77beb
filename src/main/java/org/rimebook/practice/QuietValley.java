package org.rimebook.practice;

import de.siegmar.fastcsv.writer.LineDelimiter;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Entry.Header;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;

/** A winter in a sheltered valley: little wind, sun on the wires, drizzle, one cloudburst. */
final class QuietValley {

  private static final long SEED = 20_231_101L;
  private static final double OIL_L = 0.1;
  private static final StationClock CLOCK = new StationClock(ZoneOffset.ofHours(-8));
  private static final Interval SEASON = CLOCK.span("2023-11-01T00:00", "2024-05-01T00:00");
  private static final Interval POWER = CLOCK.span("2024-02-06T01:00", "2024-02-06T04:00");
  private static final Interval VISIT = CLOCK.span("2024-03-14T10:00", "2024-03-14T10:45");
  private static final Interval DRY = CLOCK.span("2024-04-18T00:00", "2024-04-24T00:00");
  private static final Interval DRIZZLE = CLOCK.span("2023-11-19T04:00", "2023-11-19T16:00");
  private static final Interval CLOUDBURST = CLOCK.span("2024-04-27T15:20", "2024-04-27T15:45");

  private QuietValley() {}

  static PracticeSeason season() {
    Weather weather =
        Weather.simulated(
            Sampling.every(Duration.ofMinutes(5), SEASON),
            CLOCK.offset(),
            new Climate(6, 9, 5, 3.5, 1.3),
            SEED);
    SimulatedSeason season =
        new SeasonBuilder(sheet(), weather, SEED)
            .fell(precipitation(weather))
            .charge(Visit.depthMm(3.0, InventedGauge.ORIFICE_AREA_CM2))
            .visit(new Visit(VISIT, false, Visit.depthMm(OIL_L, InventedGauge.ORIFICE_AREA_CM2)))
            .evaporation(new Evaporation(CLOCK.span("2024-04-05T00:00", "2024-05-01T00:00"), 0.12))
            .depth(new Tilt(0.004, 200))
            .depth(new TemperatureCoefficient(-4e-5, 1e-5, 20, 0))
            .depth(new SunDrift(0.8, 3_600_000))
            .depth(new WindNoise(0.015, 0.2, 0.3, 300_000))
            .depth(new Rattle(VISIT, 4))
            .frequency(new Spikes(0.04, 120))
            .frequency(new Quantisation(0.01))
            .powerFailure(POWER)
            .build();
    return new PracticeSeason(
        season,
        new LoggerHabits(',', '.', LineDelimiter.LF, 2, false),
        LoggerFaults.NONE,
        entries(),
        note());
  }

  private static StationSheet sheet() {
    return InventedGauge.sheet(
        new InventedGauge.Place("Tallis Flat", 51.4, -118.3, 640, CLOCK.offset()),
        LocalTime.MIDNIGHT,
        2.0,
        WindShield.SINGLE_ALTER,
        InventedGauge.wires("north", "southeast", "southwest"));
  }

  private static Precipitation precipitation(Weather weather) {
    return Storms.simulated(weather, new StormClimate(2.6, 8, 1.0, 0.25), SEED)
        .without(CLOCK.span("2023-11-18T12:00", "2023-11-20T12:00"))
        .without(CLOCK.span("2024-02-05T18:00", "2024-02-06T12:00"))
        .without(DRY)
        .without(CLOCK.span("2024-04-27T06:00", "2024-04-28T06:00"))
        .with(Pulse.atRate(DRIZZLE, 0.05), Pulse.atRate(CLOUDBURST, 30));
  }

  private static List<Entry> entries() {
    return List.of(
        new Entry.Remark(
            new Header(
                "qv-1",
                "2023-11-01T08:30:00-08:00",
                "mk",
                "Charged with 2.8 L of antifreeze and 0.2 L of oil the day before."),
            Optional.empty()),
        new Entry.ServiceVisit(
            new Header("qv-2", "2024-03-14T18:05:00-07:00", "mk", "Oil film thin. Shield free."),
            VISIT,
            List.of(VisitAction.INSPECTED, VisitAction.OIL_ADDED),
            OptionalDouble.empty(),
            OptionalDouble.of(OIL_L)),
        new Entry.DrySpell(
            new Header(
                "qv-3", "2024-05-02T09:12:00-07:00", "ao", "Clear sky all week; it evaporates."),
            DRY));
  }

  private static PracticeSeason.Note note() {
    return new PracticeSeason.Note(
        "Quiet valley: Tallis Flat, 2023-24",
        "A winter and spring in a sheltered valley. Single readings are quiet; what has to be"
            + " told from catch is slow: sun on the southern wires, temperature, evaporation.",
        List.of(
            "Drizzle of 0.05 mm/h for twelve hours on 2023-11-19, 04:00 to 16:00.",
            "Power failure inside a day on 2024-02-06, 01:00 to 04:00; nothing fell.",
            "Visit on 2024-03-14, 10:00 to 10:45: 0.1 L of oil lifts the level by 5 mm.",
            "Evaporation from 2024-04-05 on, size 0.12 mm/d.",
            "A cloudburst of 30 mm/h for 25 min on 2024-04-27, 15:20.",
            "Single spikes, about one wire-reading in 25 days each.",
            "The wires read up to a few tenths of a millimetre high in sun, the northern one"
                + " least, and about 0.004 % less per °C."));
  }
}
