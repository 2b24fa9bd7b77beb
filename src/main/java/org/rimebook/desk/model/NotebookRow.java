package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimebook.findings.Finding;
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
   * A finding nobody has decided on.
   *
   * @param finding the finding
   * @param time when it is, in station time
   */
  record Found(Finding finding, String time) implements NotebookRow {}

  /**
   * What is looked for.
   *
   * @param text words each entry is to contain in whatever case; empty for all
   * @param kind the only kind shown, by its code or {@link #FINDINGS}; empty for all
   * @param withdrawn whether entries that no longer count are shown
   */
  record Filter(String text, String kind, boolean withdrawn) {
    /** The kind that stands for findings. */
    public static final String FINDINGS = "finding";

    /** All entries that count. */
    public static final Filter NONE = new Filter("", "", false);

    boolean takes(Finding finding) {
      String all = FindingWords.kind(finding) + " " + FindingWords.subject(finding);
      return (kind.isEmpty() || kind.equals(FINDINGS)) && contained(all + " " + finding.reason());
    }

    boolean takes(Entry entry) {
      String all =
          String.join(
              " ",
              EntryWords.kind(entry),
              EntryWords.particulars(entry),
              entry.header().note(),
              entry.header().by());
      return (kind.isEmpty() || kind.equals(entry.kind())) && contained(all);
    }

    private boolean contained(String all) {
      return all.toLowerCase(Locale.ROOT).contains(text.strip().toLowerCase(Locale.ROOT));
    }
  }

  /** The rows of a notebook, and of what is left to decide, in the order of their times. */
  static List<NotebookRow> of(
      Notebook notebook, List<Finding> findings, Filter filter, EntryTimes times) {
    Standing standing = Standing.of(notebook);
    List<Dated> shown = new ArrayList<>();
    for (Entry entry : notebook.history()) {
      boolean counts = standing.counting().contains(entry.header().id());
      boolean wanted = !(entry instanceof Entry.Withdrawal) && filter.takes(entry);
      if (wanted && (counts || filter.withdrawn())) {
        shown.add(new Dated(startMs(entry), new Line(entry, time(entry, times), !counts)));
      }
    }
    for (Finding finding : findings) {
      if (filter.takes(finding)) {
        String time = times.span(finding.span());
        shown.add(new Dated(finding.span().fromMs(), new Found(finding, time)));
      }
    }
    shown.sort(Comparator.comparingLong(Dated::startMs));
    List<NotebookRow> rows = new ArrayList<>();
    String month = "";
    for (Dated row : shown) {
      String own = times.month(row.startMs());
      if (!own.equals(month)) {
        rows.add(new Month(own));
        month = own;
      }
      rows.add(row.row());
    }
    return List.copyOf(rows);
  }

  /**
   * A row and its place in time.
   *
   * @param startMs when what it is about begins [ms since epoch]
   * @param row the row
   */
  record Dated(long startMs, NotebookRow row) {}

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
