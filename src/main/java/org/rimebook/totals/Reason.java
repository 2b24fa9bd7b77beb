package org.rimebook.totals;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.rimebook.findings.FindingKind;

/** Codes of the column {@code reasons}, in the order they are written. */
public enum Reason {
  GAP("gap", "no usable readings for part of it; what fell in the gap is the difference of level"),
  NO_CHANGE("no-change", "no usable readings, and no rise of level beyond its uncertainty"),
  LATE_CATCH("late-catch", "entry: the total is known, its timing isn't"),
  SERVICE_VISIT("service-visit", "entry: a service visit; the level was joined across it"),
  DRY_SPELL("dry-spell", "entry: nothing fell"),
  ANALYST_ESTIMATE("analyst-estimate", "entry: the analyst's own total"),
  UNKNOWN_CATCH("unknown-catch", "what fell in part of it isn't known"),
  RECORD_EDGE("record-edge", "the record starts or ends inside it"),
  BAD_INTERVAL("bad-interval", "entry: one or more wires left out"),
  WIRE_MISSING("wire-missing", "one or more wires gave no usable reading for part of it"),
  ONE_WIRE("one-wire", "one wire alone; nothing to check it against"),
  WIRES_DISAGREE("wires-disagree", "the wires changed by different amounts; nobody has said why"),
  OUT_OF_RANGE("out-of-range", "readings outside a wire's physical range were left out"),
  SPIKE("spike", "isolated spikes were left out"),
  TRACE("trace", "something fell, less than rounds to the first printed digit"),
  SILENCE(FindingKind.GAP),
  CLOCK_JUMP(FindingKind.CLOCK_JUMP),
  CLOCK_OFFSET(FindingKind.CLOCK_OFFSET),
  CLOCK_DRIFT(FindingKind.CLOCK_DRIFT),
  SAMPLING_CHANGE(FindingKind.SAMPLING_CHANGE),
  LOW_SUPPLY(FindingKind.LOW_SUPPLY),
  UNMARKED_VISIT(FindingKind.UNMARKED_VISIT),
  VISIT_LITRES(FindingKind.VISIT_LITRES),
  SILENT_WIRE(FindingKind.SILENT_WIRE),
  STUCK_WIRE(FindingKind.STUCK_WIRE),
  WIRE_OUT_OF_RANGE(FindingKind.WIRE_OUT_OF_RANGE),
  INTERFERENCE(FindingKind.INTERFERENCE),
  NOISY_WIRE(FindingKind.NOISY_WIRE),
  DRIFTING_WIRE(FindingKind.DRIFTING_WIRE),
  EXCHANGED_WIRES(FindingKind.EXCHANGED_WIRES),
  CALIBRATION(FindingKind.CALIBRATION),
  FRICTION(FindingKind.FRICTION),
  DAILY_WAVE(FindingKind.DAILY_WAVE),
  WIND_PUMPING(FindingKind.WIND_PUMPING),
  CAPPING(FindingKind.CAPPING),
  FROZEN(FindingKind.FROZEN),
  OVERFLOW(FindingKind.OVERFLOW),
  NEAR_CAPACITY(FindingKind.NEAR_CAPACITY),
  LEAK(FindingKind.LEAK),
  EVAPORATION(FindingKind.EVAPORATION),
  ZERO_RUN(FindingKind.ZERO_RUN),
  RATE(FindingKind.RATE),
  WEATHER_MISMATCH(FindingKind.WEATHER_MISMATCH);

  private static final Map<FindingKind, Reason> BY_FINDING = new EnumMap<>(FindingKind.class);

  static {
    for (Reason reason : values()) {
      reason.finding.ifPresent(kind -> BY_FINDING.put(kind, reason));
    }
  }

  private final String code;
  private final String words;
  private final Optional<FindingKind> finding;

  Reason(String code, String words) {
    this(code, words, Optional.empty());
  }

  Reason(FindingKind finding) {
    this(finding.code(), "finding, not decided: " + finding.words(), Optional.of(finding));
  }

  Reason(String code, String words, Optional<FindingKind> finding) {
    this.code = code;
    this.words = words;
    this.finding = finding;
  }

  /** The reason of a total that a finding puts in doubt. */
  static Reason of(FindingKind kind) {
    return BY_FINDING.get(kind);
  }

  /** The code in the tables. */
  public String code() {
    return code;
  }

  /** What it means. */
  public String words() {
    return words;
  }
}
