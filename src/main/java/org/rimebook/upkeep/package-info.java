/**
 * Looking after the gauge: calibrations against check weights, what was poured in against what the
 * wires show, freezing and overflow, and when somebody has to go there next. Doesn't change totals.
 */
package org.rimebook.upkeep;
