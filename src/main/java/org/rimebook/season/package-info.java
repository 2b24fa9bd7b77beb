/**
 * The season: reads a season folder and computes everything that follows from it, stage by stage.
 * Every stage is a value; nothing is written. After another notebook entry a season is revised
 * where that changes something, or computed anew.
 */
package org.rimebook.season;
