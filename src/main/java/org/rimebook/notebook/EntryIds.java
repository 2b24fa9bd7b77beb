package org.rimebook.notebook;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/** Headers for the entries of one step: ids that no other entry has, and when they were written. */
public final class EntryIds {

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

  private final String stem;
  private final String at;
  private final String by;
  private int next = 1;

  /**
   * @param prefix what the step does; empty for one that marks
   * @param notebook the notebook the entries go to
   * @param by initials of the writer
   * @param now the time, in the station's offset
   */
  private EntryIds(String prefix, Notebook notebook, String by, OffsetDateTime now) {
    this.at = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(now);
    this.by = by;
    String base = prefix + STAMP.format(now) + (by.isEmpty() ? "" : "-" + by);
    this.stem = unused(base, notebook.history());
  }

  /**
   * Ids for a step.
   *
   * @param prefix what the step does; empty for one that marks
   * @param notebook the notebook the entries go to
   * @param writer who writes
   */
  public static EntryIds of(String prefix, Notebook notebook, Writer writer) {
    OffsetDateTime now =
        OffsetDateTime.ofInstant(writer.clock().instant(), writer.offset())
            .truncatedTo(ChronoUnit.SECONDS);
    return new EntryIds(prefix, notebook, writer.initials(), now);
  }

  /**
   * Who writes.
   *
   * @param initials initials
   * @param clock tells the time
   * @param offset the station's offset
   */
  public record Writer(String initials, Clock clock, ZoneOffset offset) {}

  /** The header of the next entry of the step. */
  public Entry.Header header(String note) {
    return new Entry.Header(stem + "." + next++, at, by, note);
  }

  private static String unused(String base, List<Entry> history) {
    String free = base;
    for (int number = 2; starts(history, free + "."); number++) {
      free = base + "-" + number;
    }
    return free;
  }

  private static boolean starts(List<Entry> history, String stem) {
    return history.stream().anyMatch(entry -> entry.header().id().startsWith(stem));
  }
}
