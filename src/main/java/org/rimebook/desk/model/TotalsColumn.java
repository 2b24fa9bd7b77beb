package org.rimebook.desk.model;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.rimebook.totals.TotalRow;

/** Columns of the totals table, in their order. */
public enum TotalsColumn {
  START("Start", "start", Comparator.comparingLong(r -> r.interval().fromMs())),
  CATCH("Catch mm", "catch_mm", known(r -> r.catchUnits())),
  UNCERTAINTY("± mm", "uncertainty_mm", Comparator.comparingDouble(r -> mm(r.uncertaintyMm()))),
  QUALITY("Quality", "quality", Comparator.comparing(TotalRow::quality)),
  COMPLETE("Complete %", "completeness_pct", Comparator.comparingDouble(TotalRow::completeness)),
  WIRES("Wires", "wires", Comparator.comparing(r -> String.join("+", r.wires()))),
  SINCE("Accumulated since", "accumulated_since", known(r -> r.accumulatedSinceMs())),
  ADJUSTED("Adjusted mm", "adjusted_mm", known(r -> r.adjustedUnits())),
  PHASE("Phase", "phase", Comparator.comparingInt(r -> r.phase().map(Enum::ordinal).orElse(-1))),
  REASONS("Reasons", "reasons", Comparator.comparing(r -> r.reasons().toString()));

  private final String words;
  private final String code;
  private final Comparator<TotalRow> order;

  TotalsColumn(String words, String code, Comparator<TotalRow> order) {
    this.words = words;
    this.code = code;
    this.order = order;
  }

  private interface Whole {
    OptionalLong of(TotalRow row);
  }

  private static Comparator<TotalRow> known(Whole value) {
    return Comparator.comparingLong(row -> value.of(row).orElse(Long.MIN_VALUE));
  }

  private static double mm(OptionalDouble value) {
    return value.orElse(Double.NEGATIVE_INFINITY);
  }

  /** Its heading, with the unit. */
  public String words() {
    return words;
  }

  /** Its name in copied and written tables. */
  public String code() {
    return code;
  }

  /** Whether it holds figures that stand right-aligned. */
  public boolean figures() {
    return this == CATCH || this == UNCERTAINTY || this == COMPLETE || this == ADJUSTED;
  }

  /** The order of rows by this column, the least first; what is missing comes first. */
  public Comparator<TotalRow> order() {
    return order;
  }
}
