package org.rimebook.depth;

/** Whether a wire's reading is used, and if not, why. */
public enum Screening {
  USED(""),
  MISSING("missing"),
  OUT_OF_RANGE("out-of-range"),
  SPIKE("spike"),
  BAD_INTERVAL("bad-interval"),
  SERVICE_VISIT("service-visit");

  private static final Screening[] VALUES = values();

  private final String code;

  Screening(String code) {
    this.code = code;
  }

  /** Code in tables and explanations; empty for a used reading. */
  public String code() {
    return code;
  }

  static Screening ofOrdinal(int ordinal) {
    return VALUES[ordinal];
  }
}
