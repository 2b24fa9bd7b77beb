package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonDepths;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/** The stages of a season's computation as the window asks for them; run away from its thread. */
final class SeasonStages {

  private SeasonStages() {}

  static Opened open(Path folder, Progress progress) throws InputException {
    Season season = Season.openSoon(folder, progress.part(0, 0.7));
    return new Opened(folder, SeasonDepths.of(season, progress.part(0.7, 1)));
  }

  /** The same season with its notebook's file as it was found. */
  static Season with(Season season, NotebookFile found) {
    Season.Digests digests = season.digests().with(found.sha256());
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

  /** All of it, with the notebook as it is on disk. */
  static Computed settled(Opened opened, Resolution resolution, Progress progress)
      throws InputException {
    Season onDisk = opened.season().withNotebookIn(opened.folder());
    onDisk.digests().files().begin();
    SeasonDepths stage = opened.stage().anew(onDisk, progress.part(0, 0.1));
    SeasonResult result = SeasonResult.of(stage, progress.part(0.1, 0.95));
    onDisk.recognised(opened.folder());
    progress.step("totals", 0.95);
    return new Computed(result, result.totals(resolution), Computed.State.SETTLED);
  }

  /** What is close to it, at once; empty when nothing has been computed yet. */
  static Optional<Computed> close(
      Notebook notebook, Resolution resolution, Optional<Computed> before, Computed.State state) {
    return before.map(
        known -> {
          SeasonResult result = known.result().revised(notebook);
          return new Computed(result, result.totals(resolution), state);
        });
  }
}
