package org.rimebook.depth;

/**
 * Some rows of a record that follow each other.
 *
 * @param fromRow first row
 * @param toRow the row after the last
 */
public record RowRange(int fromRow, int toRow) {}
