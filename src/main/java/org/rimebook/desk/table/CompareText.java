package org.rimebook.desk.table;

import java.util.Optional;
import java.util.OptionalLong;
import org.rimebook.desk.model.ShortTime;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryDifference;
import org.rimebook.notebook.EntryWords;
import org.rimebook.totals.DayDifference;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * What stands in the tables of a comparison.
 *
 * @param time station time
 * @param resolution resolution of the totals
 */
record CompareText(ShortTime time, Resolution resolution) {

  String span(EntryDifference difference) {
    return difference.span().map(time::span).orElse("no time of its own");
  }

  /** One side of a difference; its time only where the sides differ in it. */
  String side(EntryDifference difference, Optional<Entry> entry) {
    return entry.map(e -> words(difference, e)).orElse("–");
  }

  private String words(EntryDifference difference, Entry entry) {
    String particulars =
        entry instanceof Entry.Dismissal dismissal
            ? dismissal.finding()
            : EntryWords.particulars(entry);
    String note = entry.header().note();
    String by = entry.header().by();
    return entry.kind().replace('-', ' ')
        + (particulars.isEmpty() ? "" : " (" + particulars + ")")
        + (difference.kind() == EntryDifference.Kind.OTHER_SPAN
            ? ", " + entry.span().map(time::span).orElse("")
            : "")
        + (note.isEmpty() ? "" : ": " + note)
        + (by.isEmpty() ? "" : " – " + by);
  }

  String total(TotalRow row) {
    return row.catchUnits().isPresent()
        ? resolution.toMm(row.catchUnits().getAsLong()).toPlainString()
        : "missing";
  }

  String difference(DayDifference day) {
    OptionalLong units = day.units();
    if (units.isEmpty()) {
      return "";
    }
    String plus = units.getAsLong() > 0 ? "+" : "";
    return plus + resolution.toMm(units.getAsLong()).toPlainString();
  }

  String quality(DayDifference day) {
    return day.mine().quality() == day.theirs().quality()
        ? day.mine().quality().code()
        : day.mine().quality().code() + ", theirs " + day.theirs().quality().code();
  }
}
