/**
 * Deciding: the totals table, why a total is what it is, two notebooks side by side, signing off
 * and writing the tables. What they show is in {@code desk.model}.
 */
package org.rimebook.desk.table;
