package org.rimebook.practice;

import de.siegmar.fastcsv.writer.LineDelimiter;

/**
 * How a logger writes its files.
 *
 * @param delimiter field delimiter
 * @param decimal decimal mark
 * @param lineEnd end of a line
 * @param frequencyDecimals decimals of a frequency
 * @param preamble whether a line about the logger stands above the header, and a row of units below
 */
public record LoggerHabits(
    char delimiter, char decimal, LineDelimiter lineEnd, int frequencyDecimals, boolean preamble) {}
