package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Interval;

/** A row of the notebook page. */
public sealed interface NotebookRow {

  /**
   * The head of a month.
   *
   * @param words for example "January 2025"
   */
  record Month(String words) implements NotebookRow {}

  /**
   * An entry.
   *
   * @param entry the entry
   * @param time when it is about, else when it was written, in station time
   * @param withdrawn whether it no longer counts
   */
  record Line(Entry entry, String time, boolean withdrawn) implements NotebookRow {}

  /**
   * What is looked for.
   *
   * @param text words each entry is to contain in whatever case; empty for all
   * @param kind the only kind shown, by its code; empty for all
   * @param withdrawn whether entries that no longer count are shown
   */
  record Filter(String text, String kind, boolean withdrawn) {
    /** All entries that count. */
    public static final Filter NONE = new Filter("", "", false);

    boolean takes(Entry entry) {
      String all =
          String.join(
              " ",
              EntryWords.kind(entry),
              EntryWords.particulars(entry),
              entry.header().note(),
              entry.header().by());
      String wanted = text.strip().toLowerCase(Locale.ROOT);
      return (kind.isEmpty() || kind.equals(entry.kind()))
          && all.toLowerCase(Locale.ROOT).contains(wanted);
    }
  }

  /** The rows of a notebook in the order of what the entries are about, the earliest first. */
  static List<NotebookRow> of(Notebook notebook, Filter filter, EntryTimes times) {
    Standing standing = Standing.of(notebook);
    List<Entry> shown = new ArrayList<>();
    for (Entry entry : notebook.history()) {
      boolean counts = standing.counting().contains(entry.header().id());
      boolean wanted = !(entry instanceof Entry.Withdrawal) && filter.takes(entry);
      if (wanted && (counts || filter.withdrawn())) {
        shown.add(entry);
      }
    }
    shown.sort(Comparator.comparingLong(NotebookRow::startMs));
    List<NotebookRow> rows = new ArrayList<>();
    String month = "";
    for (Entry entry : shown) {
      String own = times.month(startMs(entry));
      if (!own.equals(month)) {
        rows.add(new Month(own));
        month = own;
      }
      boolean counts = standing.counting().contains(entry.header().id());
      rows.add(new Line(entry, time(entry, times), !counts));
    }
    return List.copyOf(rows);
  }

  private static String time(Entry entry, EntryTimes times) {
    Optional<Interval> span = entry.span();
    return span.map(times::span).orElseGet(() -> times.dayAndTime(startMs(entry)));
  }

  private static long startMs(Entry entry) {
    return entry
        .span()
        .map(Interval::fromMs)
        .orElseGet(() -> EntryTimes.writtenMs(entry.header().at()));
  }
}
