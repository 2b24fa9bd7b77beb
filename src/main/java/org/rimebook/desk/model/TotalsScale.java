package org.rimebook.desk.model;

/** How long the intervals of the totals table are. */
public enum TotalsScale {
  HOURLY("Hourly", "hour"),
  DAILY("Daily", "day"),
  MONTHLY("Monthly", "month");

  private final String words;
  private final String unit;

  TotalsScale(String words, String unit) {
    this.words = words;
    this.unit = unit;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }

  /** The word for one interval. */
  public String unit() {
    return unit;
  }
}
