package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimebook.depth.WireDepthStage;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.season.Progress;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.totals.Resolution;

/** The stages of a season's computation as the window asks for them; run away from its thread. */
final class SeasonStages {

  private SeasonStages() {}

  static Opened open(Path folder, Progress progress) throws InputException {
    progress.at("reading the record", 0);
    Season season = Season.open(folder);
    progress.at("depth of each wire", 0.8);
    return new Opened(
        folder, season, WireDepthStage.of(season.record(), season.sheet(), season.notebook()));
  }

  /** The same season with another notebook. */
  static Season with(Season season, Notebook notebook) {
    return new Season(season.sheet(), season.record(), notebook, season.digests(), season.notes());
  }

  /** The same season with its notebook's file as it was found. */
  static Season with(Season season, NotebookFile found) {
    Season.Digests digests =
        new Season.Digests(season.digests().record(), season.digests().station(), found.sha256());
    List<Problem> ofRecord = season.record().provenance().notes();
    int ofSheet = season.notes().size() - season.notebook().notes().size() - ofRecord.size();
    List<Problem> notes = new ArrayList<>(season.notes().subList(0, ofSheet));
    notes.addAll(found.notebook().notes());
    notes.addAll(ofRecord);
    return new Season(season.sheet(), season.record(), found.notebook(), digests, notes);
  }

  /** A notebook with one more entry, or with one in place of the entry of the same id. */
  static Notebook with(Notebook notebook, Entry draft) {
    List<Entry> history = new ArrayList<>(notebook.history());
    history.removeIf(entry -> entry.header().id().equals(draft.header().id()));
    history.add(draft);
    return new Notebook(history, notebook.notes());
  }

  static Computed settled(Season season, Resolution resolution, Progress progress)
      throws InputException {
    progress.at("catch", 0);
    SeasonResult result = SeasonResult.of(season);
    progress.at("totals", 0.9);
    return new Computed(result, result.totals(resolution), Computed.State.SETTLED);
  }

  static Computed close(
      Season season, Resolution resolution, Optional<Computed> before, Computed.State state)
      throws InputException {
    SeasonResult result = SeasonResult.of(season);
    return new Computed(result, result.totals(resolution), state);
  }
}
