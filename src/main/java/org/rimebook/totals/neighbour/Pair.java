package org.rimebook.totals.neighbour;

import org.rimebook.station.Interval;

/**
 * What two stations caught in the same time.
 *
 * @param span a day, or the fewest days that both tables have as a whole
 * @param ownMm what the station caught [mm]
 * @param otherMm what its neighbour caught [mm], or the mean of its neighbours
 */
public record Pair(Interval span, double ownMm, double otherMm) {}
