package org.rimebook.totals;

/**
 * The total of one calendar month of climatological days.
 *
 * @param row the total in the form of an hour's or a day's; its phase is always empty, as a month
 *     has many
 * @param days climatological days the month has
 * @param daysMissing days of the record whose catch is in no total
 * @param daysElsewhere days whose catch is in a total of a later month
 * @param daysOutside days the record doesn't touch
 */
public record MonthTotal(
    TotalRow row, int days, int daysMissing, int daysElsewhere, int daysOutside) {

  /** Whether the total holds the catch of every day. */
  public boolean whole() {
    return daysMissing + daysElsewhere + daysOutside == 0;
  }
}
