/**
 * Views of a season as figures for paper: lines and words on white, without anything of the window.
 * Draws what was computed and computes nothing; the same bytes for the same season.
 */
package org.rimebook.export.figure;
