/**
 * The season: reads a season folder and computes everything that follows from it, stage by stage.
 * Every stage is a value; nothing is written.
 */
package org.rimebook.season;
