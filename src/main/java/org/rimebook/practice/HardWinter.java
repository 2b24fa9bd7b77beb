package org.rimebook.practice;

import de.siegmar.fastcsv.writer.LineDelimiter;
import java.time.Duration;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

/** A winter in which everything goes wrong once, with the notebook that puts it right. */
final class HardWinter {

  static final StationClock CLOCK = new StationClock(ZoneOffset.ofHours(-7));
  static final Interval DAY_GAP_WITH_CATCH = CLOCK.span("2024-11-20T20:00", "2024-11-21T14:00");
  static final Interval DAY_GAP_DRY = CLOCK.span("2024-12-03T22:00", "2024-12-04T16:00");
  static final Interval GAP_INSIDE_DAY = CLOCK.span("2024-12-18T11:00", "2024-12-18T15:30");
  static final Interval CAPPED = CLOCK.span("2025-01-08T03:00", "2025-01-10T12:00");
  static final Duration CAP_SLIDES = Duration.ofMinutes(40);
  static final Interval WIRE_FAILED = CLOCK.span("2025-01-12T05:00", "2025-01-22T11:10");
  static final Interval FIRST_VISIT = CLOCK.span("2025-01-22T10:30", "2025-01-22T11:45");
  static final Interval ANEMOMETER_ICED = CLOCK.span("2025-02-01T18:00", "2025-02-03T09:00");
  static final Interval CLOCK_LOST = CLOCK.span("2025-02-10T06:00", "2025-02-10T18:00");
  static final Interval SECOND_VISIT = CLOCK.span("2025-03-05T10:00", "2025-03-05T11:30");
  static final Interval EMPTIED_UNSEEN = CLOCK.span("2025-03-04T18:00", "2025-03-05T11:40");
  static final Interval DRY = CLOCK.span("2025-03-20T08:00", "2025-03-26T08:00");
  static final String FAILING_WIRE = "hill";
  static final double FIRST_CHARGE_L = 2.6;
  static final double SECOND_CHARGE_L = 2.4;
  static final double OIL_L = 0.2;

  private static final long SEED = 20_241_015L;
  private static final int FAILING = 1;
  private static final long ERRATIC_MS = 8 * 3_600_000L;
  private static final Interval SEASON = CLOCK.span("2024-10-15T08:00", "2025-04-15T08:00");
  private static final Interval BEFORE_FIRST_VISIT =
      CLOCK.span("2024-10-15T08:00", "2025-01-22T11:45");

  private HardWinter() {}

  static PracticeSeason season() {
    Weather weather =
        Weather.simulated(
            Sampling.every(Duration.ofMinutes(5), SEASON),
            CLOCK.offset(),
            new Climate(2, 9, 4, 4.5, 3.2),
            SEED);
    SeasonBuilder builder = new SeasonBuilder(sheet(), weather, SEED);
    water(builder, weather);
    wires(builder);
    logger(builder);
    return new PracticeSeason(
        builder.build(),
        new LoggerHabits(',', '.', LineDelimiter.CRLF, 2, true),
        new LoggerFaults(
            List.of(CLOCK_LOST),
            List.of(CLOCK.span("2024-11-05T09:00", "2024-11-05T15:00")),
            Set.of(YearMonth.of(2024, 12), YearMonth.of(2025, 2)),
            Set.of(YearMonth.of(2025, 1), YearMonth.of(2025, 4))),
        HardWinterNotebook.entries(),
        HardWinterNotebook.note());
  }

  private static StationSheet sheet() {
    List<Wire> wires = new ArrayList<>(InventedGauge.wires("creek", FAILING_WIRE, "road"));
    wires.set(FAILING, InventedGauge.replaced(wires.get(FAILING), WIRE_FAILED.to()));
    return InventedGauge.sheet(
        new InventedGauge.Place("Quern Hollow", 49.7, -115.9, 1620, CLOCK.offset()),
        LocalTime.of(8, 0),
        2.5,
        WindShield.SINGLE_ALTER,
        wires);
  }

  private static void water(SeasonBuilder builder, Weather weather) {
    double area = InventedGauge.ORIFICE_AREA_CM2;
    builder
        .fell(precipitation(weather))
        .charge(Visit.depthMm(FIRST_CHARGE_L + OIL_L, area))
        .cap(new Cap(CAPPED, CAP_SLIDES))
        .visit(new Visit(FIRST_VISIT, true, Visit.depthMm(FIRST_CHARGE_L + OIL_L, area)))
        .visit(new Visit(SECOND_VISIT, true, Visit.depthMm(SECOND_CHARGE_L + OIL_L, area)))
        .evaporation(new Evaporation(CLOCK.span("2025-03-16T00:00", "2025-04-15T08:00"), 0.2));
  }

  private static Precipitation precipitation(Weather weather) {
    return Storms.simulated(weather, new StormClimate(3.6, 10, 0.9, 0.15), SEED)
        .without(CLOCK.span("2024-11-20T08:00", "2024-11-22T08:00"))
        .without(CLOCK.span("2024-12-03T12:00", "2024-12-05T08:00"))
        .without(CLOCK.span("2024-12-18T08:00", "2024-12-19T08:00"))
        .without(CLOCK.span("2025-01-08T00:00", "2025-01-11T08:00"))
        .without(CLOCK.span("2025-03-04T08:00", "2025-03-06T08:00"))
        .without(DRY)
        .with(
            Pulse.atRate(CLOCK.span("2024-11-20T18:00", "2024-11-21T10:00"), 0.8),
            Pulse.atRate(CLOCK.span("2024-12-18T12:30", "2024-12-18T14:40"), 1.1),
            Pulse.atRate(CLOCK.span("2025-01-08T01:00", "2025-01-08T15:00"), 1.2),
            Pulse.atRate(CLOCK.span("2025-01-09T04:00", "2025-01-09T13:00"), 0.9),
            Pulse.atRate(CLOCK.span("2025-03-04T20:00", "2025-03-05T02:00"), 1.07));
  }

  private static void wires(SeasonBuilder builder) {
    builder
        .depth(new Tilt(0.008, 310))
        .depth(new TemperatureCoefficient(-4e-5, 1e-5, 20, 0))
        .depth(new SunDrift(0.7, 2_700_000))
        .depth(new WindNoise(0.02, 0.22, 0.4, 300_000))
        .depth(new Rattle(FIRST_VISIT, 5))
        .frequency(new DeadWire(FAILING, WIRE_FAILED, ERRATIC_MS))
        .frequency(new Spikes(0.08, 200))
        .frequency(new Quantisation(0.05));
  }

  private static void logger(SeasonBuilder builder) {
    builder
        .loggedEvery(2, BEFORE_FIRST_VISIT)
        .powerFailure(DAY_GAP_WITH_CATCH)
        .powerFailure(DAY_GAP_DRY)
        .powerFailure(GAP_INSIDE_DAY)
        .powerFailure(CLOCK.span("2025-02-10T02:00", "2025-02-10T06:00"))
        .powerFailure(EMPTIED_UNSEEN)
        .outage(Channel.WIND_SPEED, ANEMOMETER_ICED);
  }
}
