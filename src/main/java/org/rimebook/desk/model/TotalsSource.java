package org.rimebook.desk.model;

import static org.rimebook.station.Words.counted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import org.rimebook.totals.MonthTotal;
import org.rimebook.totals.MonthlyTotals;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/** All rows of a scale by time, each beside what it was when totals were last settled. */
final class TotalsSource {

  private static final double SEEN_MM = 0.01;

  private Optional<Computed> settled = Optional.empty();
  private Optional<Computed> monthsOf = Optional.empty();
  private List<MonthTotal> months = List.of();
  private List<TotalRow> monthsBefore = List.of();

  /** Forgets the season. */
  void forget() {
    settled = Optional.empty();
    monthsOf = Optional.empty();
    months = List.of();
    monthsBefore = List.of();
  }

  List<TotalsRow> rows(Computed computed, TotalsScale scale) {
    if (computed.state() == Computed.State.SETTLED
        && (settled.isEmpty() || settled.get() != computed)) {
      settled = Optional.of(computed);
      monthsBefore = List.of();
    }
    return switch (scale) {
      case HOURLY -> beside(computed.totals().hourly(), before(computed, Totals::hourly));
      case DAILY -> beside(computed.totals().daily(), before(computed, Totals::daily));
      case MONTHLY -> months(computed);
    };
  }

  private interface Table {
    List<TotalRow> of(Totals totals);
  }

  /** The settled rows, unless they are of another resolution. */
  private List<TotalRow> before(Computed computed, Table table) {
    return settled
        .filter(s -> s.totals().resolution() == computed.totals().resolution())
        .map(s -> table.of(s.totals()))
        .orElse(List.of());
  }

  private static List<TotalsRow> beside(List<TotalRow> now, List<TotalRow> before) {
    boolean compare = now != before && now.size() == before.size();
    List<TotalsRow> rows = new ArrayList<>(now.size());
    for (int i = 0; i < now.size(); i++) {
      TotalRow row = now.get(i);
      boolean changed = compare && row != before.get(i) && differs(row, before.get(i));
      rows.add(new TotalsRow(row, changed ? Optional.of(before.get(i)) : Optional.empty(), ""));
    }
    return rows;
  }

  /**
   * Whether a reader would see another total. Every entry changes what is learnt of the whole
   * season a little, and with it the last digits of every uncertainty; that marks no row.
   */
  private static boolean differs(TotalRow now, TotalRow before) {
    return !now.catchUnits().equals(before.catchUnits())
        || now.quality() != before.quality()
        || Math.abs(mm(now) - mm(before)) > SEEN_MM
        || !now.accumulatedSinceMs().equals(before.accumulatedSinceMs())
        || !now.wires().equals(before.wires())
        || !now.reasons().equals(before.reasons());
  }

  private static double mm(TotalRow row) {
    return row.uncertaintyMm().orElse(0);
  }

  private List<TotalsRow> months(Computed computed) {
    if (monthsOf.isEmpty() || monthsOf.get() != computed) {
      monthsOf = Optional.of(computed);
      months = monthly(computed);
    }
    if (monthsBefore.isEmpty() && settled.isPresent()) {
      monthsBefore = monthly(settled.get()).stream().map(MonthTotal::row).toList();
    }
    List<TotalRow> now = months.stream().map(MonthTotal::row).toList();
    List<TotalsRow> rows = beside(now, before(computed, totals -> monthsBefore));
    List<TotalsRow> lacking = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      TotalsRow row = rows.get(i);
      lacking.add(new TotalsRow(row.total(), row.before(), lacking(months.get(i))));
    }
    return lacking;
  }

  private static List<MonthTotal> monthly(Computed computed) {
    return MonthlyTotals.of(
        computed.totals(), computed.result().season().sheet(), computed.result().series());
  }

  private static String lacking(MonthTotal month) {
    StringJoiner words = new StringJoiner("; ");
    if (month.daysMissing() > 0) {
      words.add(counted(month.daysMissing(), "day") + " missing");
    }
    if (month.daysElsewhere() > 0) {
      words.add(counted(month.daysElsewhere(), "day") + " in a later month");
    }
    if (month.daysOutside() > 0) {
      words.add(counted(month.daysOutside(), "day") + " outside the record");
    }
    return words.toString();
  }
}
