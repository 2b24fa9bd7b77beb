package org.rimebook.practice.bench;

import java.util.List;
import java.util.function.UnaryOperator;
import org.rimebook.notebook.Notebook;
import org.rimebook.practice.SimulatedSeason;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;

/**
 * A simulated season with the notebook of an analyst who marked what a person sees.
 *
 * @param season the season
 * @param notebook what was marked
 * @param windy whether the mean wind is above 4 m/s
 * @param planted what was put into it to be found
 * @param written what the logger and the writer of the sheet made of it
 */
public record MarkedSeason(
    SimulatedSeason season,
    Notebook notebook,
    boolean windy,
    List<Planted> planted,
    AsWritten written) {

  public MarkedSeason {
    planted = List.copyOf(planted);
  }

  /**
   * What was written down instead of the truth.
   *
   * @param logger of the readings
   * @param writer of the gauge
   */
  record AsWritten(UnaryOperator<SeasonRecord> logger, UnaryOperator<StationSheet> writer) {}
}
