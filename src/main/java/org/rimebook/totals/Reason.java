package org.rimebook.totals;

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
  TRACE("trace", "something fell, less than rounds to the first printed digit");

  private final String code;
  private final String words;

  Reason(String code, String words) {
    this.code = code;
    this.words = words;
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
