package org.rimebook.practice;

import java.util.List;
import org.rimebook.notebook.Entry;

/**
 * A simulated season with what makes it a season folder.
 *
 * @param season the season
 * @param habits how the logger writes
 * @param faults what the logger gets wrong
 * @param entries the notebook
 * @param note what the note says of it
 */
public record PracticeSeason(
    SimulatedSeason season,
    LoggerHabits habits,
    LoggerFaults faults,
    List<Entry> entries,
    Note note) {

  public PracticeSeason {
    entries = List.copyOf(entries);
  }

  /**
   * What a reader of the folder should know first.
   *
   * @param title title
   * @param summary a few sentences
   * @param defects known defects and where they are, one each
   */
  public record Note(String title, String summary, List<String> defects) {
    public Note {
      defects = List.copyOf(defects);
    }
  }
}
