package org.rimebook.totals;

/**
 * Quality of a total, in the words of OGC WaterML 2.0 (10-126r4, quality vocabulary), the best
 * first.
 */
public enum Quality {
  /** From the level by two wires or more, complete. */
  GOOD("good"),
  /** From one wire alone: nothing to check it against. */
  UNCHECKED("unchecked"),
  /** Not measured directly: the analyst's own total, or no change of level over a gap. */
  ESTIMATE("estimate"),
  /** The wires disagree, or a finding nobody has decided on. */
  SUSPECT("suspect"),
  /** Part of the time isn't known; the total is what is known. */
  POOR("poor"),
  /** No total. */
  MISSING("missing");

  private final String code;

  Quality(String code) {
    this.code = code;
  }

  /** The word in the tables. */
  public String code() {
    return code;
  }
}
