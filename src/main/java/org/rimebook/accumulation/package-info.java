/**
 * From a noisy level to catch: which rises are precipitation, how much fell between any two
 * instants, and how well that is known. Knows the notebook's rulings on time; doesn't know hours or
 * days.
 */
package org.rimebook.accumulation;
