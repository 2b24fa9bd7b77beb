package org.rimebook.practice.bench;

import org.rimebook.notebook.Notebook;
import org.rimebook.practice.SimulatedSeason;

/**
 * A simulated season with the notebook of an analyst who marked what a person sees.
 *
 * @param season the season
 * @param notebook what was marked
 * @param windy whether the mean wind is above 4 m/s
 */
public record MarkedSeason(SimulatedSeason season, Notebook notebook, boolean windy) {}
