/**
 * The station sheet: where the gauge stands, its wires with their dated calibrations, the layout of
 * its record and the channels beside it. Holds facts as they were entered; computes nothing from
 * them. Also holds the small shared vocabulary every other package needs: an interval of time, a
 * problem with its place in a file, JSON that knows its line and column.
 */
package org.rimebook.station;
