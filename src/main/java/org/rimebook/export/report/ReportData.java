package org.rimebook.export.report;

import java.util.List;
import java.util.function.Supplier;
import org.rimebook.season.Decided;
import org.rimebook.season.EntryEffect;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/**
 * What a report is laid out from.
 *
 * @param result the season, computed throughout
 * @param totals its totals
 * @param effects what each entry does to the season's total
 * @param settled gives the findings the notebook has settled, once they are known
 */
record ReportData(
    SeasonResult result,
    Totals totals,
    List<EntryEffect> effects,
    Supplier<List<Decided>> settled) {

  ReportData {
    effects = List.copyOf(effects);
  }

  /** Findings the notebook has settled. */
  List<Decided> decided() {
    return settled.get();
  }

  Season season() {
    return result.season();
  }

  StationSheet sheet() {
    return result.season().sheet();
  }

  /** From the first hour to the end of the last. */
  Interval span() {
    List<TotalRow> hours = totals.hourly();
    return new Interval(
        hours.get(0).interval().fromMs(), hours.get(hours.size() - 1).interval().toMs());
  }

  ReportWords words() {
    return new ReportWords(sheet().utcOffset(), totals.resolution());
  }
}
