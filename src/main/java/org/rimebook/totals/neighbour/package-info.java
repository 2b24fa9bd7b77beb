/**
 * A station's daily totals beside those of its neighbours: the double-mass curve, whether its slope
 * breaks, and the ratio month by month. Knows nothing of files.
 */
package org.rimebook.totals.neighbour;
