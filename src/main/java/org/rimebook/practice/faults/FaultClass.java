package org.rimebook.practice.faults;

import java.util.Locale;
import org.rimebook.practice.bench.MarkedSeason;
import org.rimebook.practice.bench.Planter;
import org.rimebook.practice.bench.Scenario;
import org.rimebook.practice.bench.Variant;
import org.rimebook.practice.bench.Winter;

/** Classes of winters with faults nobody has marked. What a class leaves open is drawn by seed. */
public enum FaultClass {
  CALM(Scenario.CALM, "little wind, little sun, no fault"),
  WINDY(Scenario.WINDY, "mean wind 6 to 9 m/s, no fault"),
  DIURNAL(Scenario.DIURNAL, "wires move 0.05 to 0.4 mm in the sun"),
  EVAPORATION(Scenario.EVAPORATION, "0.05 to 0.5 mm/d evaporate"),
  DEAD_WIRE(Scenario.DEAD_WIRE, "a wire jumps about, then is silent for weeks"),
  DRIFTING_WIRE(Scenario.DRIFTING_WIRE, "a wire creeps for weeks"),
  GAPS(Scenario.GAPS, "power failures of minutes to days, readings lost"),
  VISITS(Scenario.VISITS, "the bucket is emptied, charged, inspected"),
  CAPPING(Scenario.CAPPING, "snow bridges the orifice and slides in later"),
  COARSE(Scenario.COARSE, "readings every 10 to 60 min, no fault"),
  QUANTISED(Scenario.QUANTISED, "a counter of 0.1 to 1 Hz, no fault"),
  DRIZZLE(Scenario.DRIZZLE, "mostly drizzle and traces, no fault"),
  INTENSE(Scenario.INTENSE, "bursts up to 60 mm/h, no fault"),
  SMALL_VISITS(
      Scenario.CALM, "oil or antifreeze poured in, the bucket lifted", RecordFaults::smallVisits),
  WINDY_VISITS(Scenario.WINDY, "the same where it is windy", RecordFaults::smallVisits),
  CLOCK_JUMP(
      Scenario.CALM,
      "the clock jumps by minutes to hours, back days later",
      RecordFaults::clockJump),
  SUMMER_TIME(
      Scenario.CALM, "the logger puts on summer time, or takes it off", RecordFaults::summerTime),
  WRONG_ZONE(
      Scenario.CALM,
      "the clock has the time of another part of the world",
      RecordFaults::wrongZone),
  CLOCK_DRIFT(Scenario.CALM, "the clock gains or loses and is set right", RecordFaults::clockDrift),
  SAMPLING_CHANGE(
      Scenario.CALM, "readings come less often for weeks", RecordFaults::samplingChange),
  LOW_SUPPLY(
      Scenario.CALM,
      "the supply is low for days, readings noisy or lost or neither",
      RecordFaults::lowSupply),
  SILENT_WIRE(
      Scenario.CALM, "a wire falls silent, comes back, falls silent again", WireFaults::silent),
  STUCK_WIRE(Scenario.CALM, "a wire gives one frequency for hours to days", WireFaults::stuck),
  STUCK_COARSE(
      Scenario.QUANTISED,
      "a wire of a coarse counter is stuck in a storm",
      WireFaults::stuckInStorm),
  CREEPING_WIRE(Scenario.CALM, "wires creep, some ever faster or with a jump", WireFaults::creep),
  CREEP_IN_SUN(Scenario.DIURNAL, "wires creep and move in the sun as well", WireFaults::creep),
  SHIFTED_WIRE(Scenario.CALM, "the zero of a wire shifts by 0.3 to 5 mm", WireFaults::shift),
  NOISY_WIRE(Scenario.CALM, "a wire grows 2 to 10 times as noisy", WireFaults::noisy),
  NOISY_IN_WIND(Scenario.WINDY, "the same on windy ridges", WireFaults::noisy),
  OUT_OF_RANGE(Scenario.CALM, "a wire gives an impossible frequency", WireFaults::outOfRange),
  INTERFERENCE(Scenario.CALM, "spikes for hours", WireFaults::interference),
  EXCHANGED_COLUMNS(
      Scenario.CALM, "frequency columns exchanged in the sheet", SheetFaults::columnsExchanged),
  EXCHANGED_LEADS(Scenario.DIURNAL, "leads exchanged at a visit", SheetFaults::leadsExchanged),
  WRONG_A(Scenario.CALM, "A of a wire wrong by 2 to 8 % in the sheet", SheetFaults::wrongA),
  WRONG_F0(
      Scenario.DIURNAL,
      "two digits of a wire's f0 exchanged in the sheet",
      SheetFaults::digitsExchanged),
  SLIPPED_B(Scenario.CALM, "B of a wire ten times off in the sheet", SheetFaults::slippedB),
  SNOW_SENSOR(
      Scenario.CALM, "snow depth and humidity are measured, no fault", LevelFaults::snowSensor),
  CAPPED(
      Scenario.CALM,
      "snow bridges the orifice until warmth, sun or wind; snow depth is measured",
      LevelFaults::caps),
  ICED(Scenario.CALM, "the inlet is iced shut for days; snow depth is measured", LevelFaults::iced),
  OVERFLOWING(Scenario.CALM, "the bucket runs full", LevelFaults::overflow),
  NEARLY_FULL(Scenario.CALM, "the bucket is nearly full at the end", LevelFaults::nearlyFull),
  LEAKING(Scenario.CALM, "0.3 to 3 mm/d leak for days to weeks", LevelFaults::leak),
  FROZEN_BUCKET(
      Scenario.CALM, "the bucket freezes, wires no longer feel the wind", LevelFaults::frozen),
  TOUCHING_WIRE(
      Scenario.CALM, "something touches a wire: it sticks and slips for days", TouchFaults::wire),
  TOUCHING_BUCKET(
      Scenario.CALM, "something touches the bucket: all wires stick and slip", TouchFaults::bucket),
  WIND_PUMPING(Scenario.WINDY, "strong wind shakes the bucket for hours", TouchFaults::wind),
  SUN_ON_WIRES(Scenario.CALM, "one or two wires move 0.2 to 0.8 mm in the sun", TouchFaults::sun),
  EVERYTHING(Scenario.EVERYTHING, "wind, sun, evaporation, a coarse counter and all mishaps");

  private final Scenario scenario;
  private final String words;
  private final Planter planter;

  FaultClass(Scenario scenario, String words) {
    this(scenario, words, Planter.NONE);
  }

  FaultClass(Scenario scenario, String words, Planter planter) {
    this.scenario = scenario;
    this.words = words;
    this.planter = planter;
  }

  /** The name in tables and on the command line. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What goes wrong, in words. */
  public String words() {
    return words;
  }

  /**
   * A winter of the class.
   *
   * @param seed seed; any number
   * @param days length [d]
   */
  public MarkedSeason winter(long seed, int days) {
    return new Winter(scenario, Variant.PLAIN, seed, days).season(planter);
  }
}
