package org.rimebook.desk.model;

/** A new season being entered, with what is to be said of it at each step. */
public final class NewSeason {

  private final Watched<SeasonDraft> draft;
  private final Watched<DraftCheck> check;
  private final Watched<FirstReadings> readings;

  /** Starts with what the logger files tell. */
  public NewSeason(SeasonSource source) {
    draft = new Watched<>(FirstDraft.of(source));
    check = new Watched<>(DraftCheck.of(draft.get()));
    readings = new Watched<>(FirstReadings.of(draft.get()));
    draft.watch(
        changed -> {
          check.set(DraftCheck.of(changed));
          readings.set(FirstReadings.of(changed));
        });
  }

  /** The season as entered so far; set to enter more. */
  public Watched<SeasonDraft> draft() {
    return draft;
  }

  /** What keeps it from being a season. */
  public Watched<DraftCheck> check() {
    return check;
  }

  /** The first readings on the calibrations entered. */
  public Watched<FirstReadings> readings() {
    return readings;
  }
}
