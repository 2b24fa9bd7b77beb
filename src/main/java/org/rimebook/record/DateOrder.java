package org.rimebook.record;

/** Order of the fields of a date written in numbers. */
enum DateOrder {
  YEAR_MONTH_DAY("year, month, day"),
  DAY_MONTH_YEAR("day, month, year"),
  MONTH_DAY_YEAR("month, day, year");

  private final String words;

  DateOrder(String words) {
    this.words = words;
  }

  /** The order in words. */
  String words() {
    return words;
  }
}
