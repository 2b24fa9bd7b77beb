/** Writes back into a season folder what is a fact: calibrations, coefficients, dated remarks. */
package org.rimebook.export.keep;
