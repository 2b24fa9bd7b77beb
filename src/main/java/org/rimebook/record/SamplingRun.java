package org.rimebook.record;

/**
 * A stretch of the record with one sampling interval.
 *
 * @param firstRow first row
 * @param lastRow last row, inclusive
 * @param intervalMs sampling interval [ms]
 */
public record SamplingRun(int firstRow, int lastRow, long intervalMs) {}
