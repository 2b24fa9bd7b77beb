package org.rimebook.findings;

import java.util.List;

/** All checks, in the tiers they are made in: each tier sees what those before it found. */
public final class Checks {

  /** Of the record as the logger wrote it, and of visits. */
  static final List<Check> RECORD =
      List.of(
          new UnmarkedVisitCheck(),
          new ClockDriftCheck(),
          new ClockOffsetCheck(),
          new ClockJumpCheck(),
          new GapCheck(),
          new LowSupplyCheck(),
          new SamplingChangeCheck(),
          new RateCheck(),
          new VisitLitresCheck(),
          new SilentWireCheck(),
          new StuckWireCheck());

  /** Of the station sheet against the wires. */
  static final List<Check> SHEET = List.of(new ExchangedWiresCheck(), new CalibrationDoubtCheck());

  /** Of the wires against each other. */
  static final List<Check> WIRES =
      List.of(
          new OutOfRangeCheck(),
          new InterferenceCheck(),
          new FrictionCheck(),
          new DriftingWireCheck(),
          new NoisyWireCheck(),
          new DailyWaveCheck(),
          new WindPumpingCheck());

  /** Of the level of the bucket. */
  static final List<Check> LEVEL =
      List.of(
          new OverflowCheck(),
          new NearCapacityCheck(),
          new CappingCheck(),
          new FrozenCheck(),
          new LeakCheck(),
          new EvaporationCheck(),
          new ZeroRunCheck(),
          new WeatherMismatchCheck());

  static final List<List<Check>> TIERS = List.of(RECORD, SHEET, WIRES, LEVEL);

  private Checks() {}

  /** Every check, in order. */
  public static List<Check> all() {
    return TIERS.stream().flatMap(List::stream).toList();
  }
}
