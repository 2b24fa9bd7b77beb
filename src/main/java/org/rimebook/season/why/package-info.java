/**
 * Why a total is what it is: the readings, wires, entries and judgements behind it, as values a
 * terminal and a window lay out each in its own way. Computes nothing that isn't in the season's
 * result, and writes no times as text.
 */
package org.rimebook.season.why;
