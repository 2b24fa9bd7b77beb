package org.rimebook.findings;

import java.util.Optional;
import java.util.stream.Stream;

/** What a finding can be about. Its code goes into tables, files and identifiers. */
public enum FindingKind {
  GAP("silence", "no readings"),
  CLOCK_JUMP("clock-jump", "clock jumped"),
  CLOCK_OFFSET("clock-offset", "clock off by a whole part of an hour"),
  CLOCK_DRIFT("clock-drift", "clock drifts"),
  SAMPLING_CHANGE("sampling-change", "sampling changed"),
  LOW_SUPPLY("low-supply", "supply voltage low"),
  UNMARKED_VISIT("unmarked-visit", "service visit, not marked"),
  VISIT_LITRES("visit-litres", "litres and level don't agree"),
  SILENT_WIRE("silent-wire", "wire silent"),
  STUCK_WIRE("stuck-wire", "wire stuck"),
  WIRE_OUT_OF_RANGE("wire-out-of-range", "wire out of range"),
  INTERFERENCE("interference", "spikes"),
  NOISY_WIRE("noisy-wire", "wire noisy"),
  DRIFTING_WIRE("drifting-wire", "wire drifts"),
  EXCHANGED_WIRES("exchanged-wires", "wires exchanged"),
  CALIBRATION("calibration", "calibration in doubt"),
  FRICTION("friction", "something touches"),
  DAILY_WAVE("daily-wave", "daily wave"),
  WIND_PUMPING("wind-pumping", "wind pumps"),
  CAPPING("capping", "orifice capped"),
  FROZEN("frozen-bucket", "bucket frozen"),
  OVERFLOW("overflow", "bucket overflows"),
  NEAR_CAPACITY("near-capacity", "bucket nearly full"),
  LEAK("leak", "bucket leaks"),
  EVAPORATION("evaporation", "evaporation"),
  ZERO_RUN("zero-run", "no catch in wet weather"),
  RATE("rate", "rate beyond limits"),
  WEATHER_MISMATCH("weather-mismatch", "catch doesn't suit the weather");

  private final String code;
  private final String words;

  FindingKind(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** The code, in lower case with hyphens. */
  public String code() {
    return code;
  }

  /** A few words for a lane or a heading. */
  public String words() {
    return words;
  }

  /** The kind with a code. */
  public static Optional<FindingKind> ofCode(String code) {
    return Stream.of(values()).filter(kind -> kind.code.equals(code)).findFirst();
  }
}
