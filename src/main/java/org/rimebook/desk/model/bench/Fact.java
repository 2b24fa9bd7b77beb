package org.rimebook.desk.model.bench;

import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;

/** Something found at the bench that goes on record. */
public sealed interface Fact {

  /**
   * What to ask before it is stored; empty text when it can be taken back and needs no question.
   */
  String question();

  /** What to say once it is stored. */
  String stored();

  /**
   * An entry of the notebook.
   *
   * @param entry the entry, its header still to be filled in
   * @param initials of who writes it; empty text when that is known
   * @param stored what to say then
   */
  record OfNotebook(Entry entry, String initials, String stored) implements Fact {

    /** A remark, of a time or of none. */
    static OfNotebook remark(
        Optional<Interval> about, String note, String initials, String stored) {
      Entry.Header header = new Entry.Header("bench", "", "", note);
      return new OfNotebook(new Entry.Remark(header, about), initials, stored);
    }

    /** Whether a season's notebook has a remark of that time with those words. */
    boolean isIn(Season season) {
      return season.notebook().inForce().stream()
          .anyMatch(
              there ->
                  there.kind().equals(entry.kind())
                      && there.span().equals(entry.span())
                      && there.header().note().equals(entry.header().note()));
    }

    @Override
    public String question() {
      return "";
    }
  }

  /**
   * Something in the station sheet.
   *
   * @param writing what is written there
   * @param entry what the notebook says of it
   * @param question with the numbers
   * @param stored what to say then
   */
  record OfSheet(SheetWriting writing, OfNotebook entry, String question, String stored)
      implements Fact {

    /** The same where the notebook couldn't be written to. */
    OfSheet untold() {
      return new OfSheet(
          writing,
          entry,
          question,
          stored + ". The notebook couldn't be written to: put a remark about it there");
    }
  }
}
