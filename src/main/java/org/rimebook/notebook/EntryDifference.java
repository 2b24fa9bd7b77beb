package org.rimebook.notebook;

import java.util.Optional;
import org.rimebook.station.Interval;

/**
 * Entries of two notebooks of one season that don't say the same.
 *
 * @param kind how they differ
 * @param mine the entry of the first notebook; empty when only the other has one
 * @param theirs the entry of the other notebook; empty when only the first has one
 */
public record EntryDifference(Kind kind, Optional<Entry> mine, Optional<Entry> theirs) {

  /** How entries differ. */
  public enum Kind {
    ONLY_MINE("only in mine"),
    ONLY_THEIRS("only in theirs"),
    /** The same time, judged in another way. */
    OTHER_MEANING("same time, judged otherwise"),
    /** The same kind about a span that overlaps. */
    OTHER_SPAN("same kind, other edges");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind in words. */
    public String words() {
      return words;
    }
  }

  /** The span of either, of the first notebook's where both have one; empty when neither has. */
  public Optional<Interval> span() {
    return mine.flatMap(Entry::span).or(() -> theirs.flatMap(Entry::span));
  }
}
