/**
 * A season's totals in open standards that other programs read: OGC WaterML 2.0, and netCDF with
 * the CF conventions. How our words map to theirs stands in one place.
 */
package org.rimebook.export.standard;
