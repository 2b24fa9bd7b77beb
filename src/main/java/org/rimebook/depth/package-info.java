/**
 * From frequency to depth: calibration curves and their uncertainty, the automatic screening of
 * single readings, and the combination of wires into one level by increments. Doesn't decide what
 * is catch.
 */
package org.rimebook.depth;
