/**
 * Hourly and daily totals: what fell in each, how well it is known, how it came about, rounded so
 * that hours add up to days and days to the season in the printed digits.
 */
package org.rimebook.totals;
