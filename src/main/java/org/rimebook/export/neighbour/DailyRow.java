package org.rimebook.export.neighbour;

import org.rimebook.station.Interval;
import org.rimebook.totals.neighbour.DayCatch;

/**
 * A row of a daily table.
 *
 * @param line 1-based line in the file
 * @param interval the day
 * @param day what it says
 */
record DailyRow(long line, Interval interval, DayCatch day) {}
