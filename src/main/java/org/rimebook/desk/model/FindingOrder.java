package org.rimebook.desk.model;

import java.util.Comparator;
import java.util.Locale;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;

/** In what order findings are walked. */
public enum FindingOrder {
  /** What is surest first. */
  STRONGEST("strongest first", Findings.BY_STRENGTH),
  /** As they follow each other in the season. */
  TIME("in order of time", Findings.BY_TIME);

  private final String words;
  private final Comparator<Finding> comparator;

  FindingOrder(String words, Comparator<Finding> comparator) {
    this.words = words;
    this.comparator = comparator;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }

  /** Puts findings in order. */
  Comparator<Finding> comparator() {
    return comparator;
  }

  /** The word it is remembered by. */
  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The other order. */
  FindingOrder other() {
    return this == STRONGEST ? TIME : STRONGEST;
  }
}
