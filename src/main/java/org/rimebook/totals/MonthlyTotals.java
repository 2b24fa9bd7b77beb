package org.rimebook.totals;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * Adds the printed days of each calendar month. A climatological day belongs to the month its start
 * lies in, station time. A month that lacks days has a total of those there are, of quality {@link
 * Quality#POOR}, and says how many it lacks; days accumulated into a later month count there, so
 * that months add up to the season in the printed digits.
 */
public final class MonthlyTotals {

  private final Totals totals;
  private final StationSheet sheet;
  private final CatchSeries series;

  private MonthlyTotals(Totals totals, StationSheet sheet, CatchSeries series) {
    this.totals = totals;
    this.sheet = sheet;
    this.series = series;
  }

  /**
   * The months a season touches, in order.
   *
   * @param totals hourly and daily totals
   * @param sheet the station sheet
   * @param series the catch the totals were made from
   */
  public static List<MonthTotal> of(Totals totals, StationSheet sheet, CatchSeries series) {
    return new MonthlyTotals(totals, sheet, series).months();
  }

  private List<MonthTotal> months() {
    Map<YearMonth, List<TotalRow>> days = new LinkedHashMap<>();
    for (TotalRow day : totals.daily()) {
      OffsetDateTime start =
          Instant.ofEpochMilli(day.interval().fromMs()).atOffset(sheet.utcOffset());
      days.computeIfAbsent(YearMonth.from(start), month -> new ArrayList<>()).add(day);
    }
    List<MonthTotal> months = new ArrayList<>();
    days.forEach((month, own) -> months.add(month(interval(month), own)));
    return months;
  }

  private Interval interval(YearMonth month) {
    return new Interval(start(month), start(month.plusMonths(1)));
  }

  private long start(YearMonth month) {
    return month.atDay(1).atTime(sheet.dayStartsAt()).toInstant(sheet.utcOffset()).toEpochMilli();
  }

  private MonthTotal month(Interval month, List<TotalRow> days) {
    int count = (int) (month.lengthMs() / Clock.DAY_MS);
    int missing = 0;
    int elsewhere = 0;
    for (TotalRow day : days) {
      if (day.catchUnits().isEmpty()) {
        long holderEndMs = holderEndMs(day);
        missing += holderEndMs < 0 ? 1 : 0;
        elsewhere += holderEndMs > month.toMs() ? 1 : 0;
      }
    }
    int outside = count - days.size();
    boolean whole = missing + elsewhere + outside == 0;
    return new MonthTotal(row(month, days, whole), count, missing, elsewhere, outside);
  }

  /** End of the later day whose total holds a missing day's catch; negative when none does. */
  private long holderEndMs(TotalRow missing) {
    for (TotalRow day : totals.daily()) {
      boolean later = day.interval().fromMs() > missing.interval().fromMs();
      if (later && day.accumulatedSinceMs().orElse(Long.MAX_VALUE) <= missing.interval().fromMs()) {
        return day.interval().toMs();
      }
    }
    return -1;
  }

  private TotalRow row(Interval month, List<TotalRow> days, boolean whole) {
    List<TotalRow> known = days.stream().filter(day -> day.catchUnits().isPresent()).toList();
    if (known.isEmpty()) {
      return row(month, days, OptionalLong.empty(), Quality.MISSING);
    }
    long units = known.stream().mapToLong(day -> day.catchUnits().getAsLong()).sum();
    Quality worst =
        known.stream().map(TotalRow::quality).max(Quality::compareTo).orElse(Quality.MISSING);
    return row(month, days, OptionalLong.of(units), whole ? worst : Quality.POOR);
  }

  private TotalRow row(Interval month, List<TotalRow> days, OptionalLong units, Quality quality) {
    long since =
        days.stream()
            .flatMapToLong(day -> day.accumulatedSinceMs().stream())
            .filter(ms -> ms < month.fromMs())
            .min()
            .orElse(month.fromMs());
    boolean total = units.isPresent();
    return new TotalRow(
        month,
        units,
        total ? OptionalDouble.of(uncertaintyMm(since, days)) : OptionalDouble.empty(),
        quality,
        days.stream().mapToDouble(TotalRow::completeness).sum() * Clock.DAY_MS / month.lengthMs(),
        wires(days),
        total && since < month.fromMs() ? OptionalLong.of(since) : OptionalLong.empty(),
        total ? adjusted(days) : OptionalLong.empty(),
        Optional.empty(),
        reasons(days, units.orElse(0) > 0));
  }

  /**
   * From the levels at its ends, over the days it has. A day the wires disagree over brings along
   * what its own uncertainty has beyond them.
   */
  private double uncertaintyMm(long sinceMs, List<TotalRow> days) {
    long toMs = sinceMs;
    double doubtMm2 = 0;
    for (TotalRow day : days) {
      if (day.catchUnits().isPresent()) {
        toMs = day.interval().toMs();
        if (day.quality() == Quality.SUSPECT) {
          doubtMm2 += beyondLevelsMm2(day);
        }
      }
    }
    double variance = series.varianceMm2(sinceMs, toMs);
    return Math.sqrt(variance + totals.resolution().roundingVarianceMm2() + doubtMm2);
  }

  private double beyondLevelsMm2(TotalRow day) {
    long since = day.accumulatedSinceMs().orElse(day.interval().fromMs());
    double whole = day.uncertaintyMm().orElse(0);
    return Math.max(0, whole * whole - series.varianceMm2(since, day.interval().toMs()));
  }

  private List<String> wires(List<TotalRow> days) {
    Set<String> used = new LinkedHashSet<>();
    days.forEach(day -> used.addAll(day.wires()));
    return sheet.wires().stream().map(Wire::name).filter(used::contains).toList();
  }

  /** Only when every day that has a total could be adjusted; a part would be read as the whole. */
  private static OptionalLong adjusted(List<TotalRow> days) {
    long units = 0;
    for (TotalRow day : days) {
      if (day.catchUnits().isPresent()) {
        if (day.adjustedUnits().isEmpty()) {
          return OptionalLong.empty();
        }
        units += day.adjustedUnits().getAsLong();
      }
    }
    return OptionalLong.of(units);
  }

  private static Set<Reason> reasons(List<TotalRow> days, boolean fell) {
    Set<Reason> reasons = EnumSet.noneOf(Reason.class);
    days.forEach(day -> reasons.addAll(day.reasons()));
    if (fell) {
      reasons.remove(Reason.TRACE);
    }
    return reasons;
  }
}
