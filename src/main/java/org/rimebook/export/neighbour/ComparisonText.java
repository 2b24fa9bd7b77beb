package org.rimebook.export.neighbour;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.rimebook.export.StationTime;
import org.rimebook.station.JsonText;
import org.rimebook.totals.neighbour.Comparison;
import org.rimebook.totals.neighbour.LeftOut;
import org.rimebook.totals.neighbour.MonthRatio;
import org.rimebook.totals.neighbour.Pair;
import org.rimebook.totals.neighbour.SlopeBreak;

/** A comparison with neighbours as lines, as JSON and as the table of its double-mass curve. */
public final class ComparisonText {

  private final String station;
  private final List<String> neighbours;
  private final Comparison comparison;
  private final ZoneOffset offset;

  /**
   * @param station name of the station
   * @param neighbours what the neighbours are called, in their order
   * @param comparison the comparison
   * @param offset the station's offset
   */
  public ComparisonText(
      String station, List<String> neighbours, Comparison comparison, ZoneOffset offset) {
    this.station = station;
    this.neighbours = List.copyOf(neighbours);
    this.comparison = comparison;
    this.offset = offset;
  }

  /** Lines for a person. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(station + " against " + String.join(", ", neighbours));
    lines.add("  own rows: " + words(comparison.own()));
    for (int i = 0; i < neighbours.size(); i++) {
      lines.add("  " + neighbours.get(i) + ": " + words(comparison.others().get(i)));
    }
    if (comparison.pairs().isEmpty()) {
      lines.add("  no day is in all tables with the same start and end, so nothing is compared");
      return lines;
    }
    lines.add(
        "  compared     "
            + comparison.pairs().size()
            + " days or runs of days, "
            + iso(comparison.pairs().get(0).span().fromMs())
            + " to "
            + iso(comparison.pairs().get(comparison.pairs().size() - 1).span().toMs()));
    lines.add(
        "  catch        "
            + decimal(comparison.ownMm(), 1)
            + " mm against "
            + decimal(comparison.otherMm(), 1)
            + " mm, ratio "
            + ratio(comparison.ratio()));
    lines.addAll(slope());
    lines.add("  month     days     own mm   other mm   ratio");
    for (MonthRatio month : comparison.months()) {
      lines.add(
          "  "
              + month.month()
              + pad(String.valueOf(month.pairs()), 7)
              + pad(decimal(month.ownMm(), 1), 11)
              + pad(decimal(month.otherMm(), 1), 11)
              + pad(ratio(month.ratio()), 8));
    }
    return lines;
  }

  private static String words(LeftOut rows) {
    return rows.rows()
        + " rows; left out: "
        + rows.missing()
        + " missing, "
        + rows.poor()
        + " poor, "
        + rows.unmatched()
        + " without a counterpart; "
        + rows.suspect()
        + " suspect ones used";
  }

  private List<String> slope() {
    List<String> words = slopeWords();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      lines.add((i == 0 ? "  slope        " : "               ") + words.get(i));
    }
    return lines;
  }

  /** What the double-mass curve says of its slope, in one part or two. */
  public List<String> slopeWords() {
    if (comparison.slopeBreak().isEmpty()) {
      return List.of("too little fell to tell whether the double-mass curve breaks");
    }
    SlopeBreak found = comparison.slopeBreak().get();
    String test =
        "(Pettitt 1979, p = "
            + decimal(found.pValue(), 3)
            + ", "
            + found.steps()
            + " steps of at least "
            + decimal(found.leastStepMm(), 1)
            + " mm)";
    if (!found.significant()) {
      return List.of("the double-mass curve doesn't break " + test);
    }
    return List.of(
        "the double-mass curve breaks at " + iso(found.atMs()) + " " + test,
        "ratio "
            + decimal(found.before(), 3)
            + " before, "
            + decimal(found.after(), 3)
            + " after; what follows × "
            + decimal(found.factor(), 3)
            + " is as before");
  }

  /** An object with everything but the curve. */
  public String json() {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("format", "rimebook-neighbour/1");
    object.put("station", station);
    object.put("neighbours", neighbours);
    object.put("pairs", comparison.pairs().size());
    object.put("own_mm", rounded(comparison.ownMm()));
    object.put("other_mm", rounded(comparison.otherMm()));
    object.put("ratio", orNull(comparison.ratio()));
    object.put("own_rows", members(comparison.own()));
    object.put("neighbour_rows", comparison.others().stream().map(this::members).toList());
    object.put("slope", comparison.slopeBreak().map(this::members).orElse(null));
    object.put("months", comparison.months().stream().map(this::members).toList());
    return JsonText.laidOut(object);
  }

  private Map<String, Object> members(LeftOut rows) {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("rows", rows.rows());
    object.put("missing", rows.missing());
    object.put("poor", rows.poor());
    object.put("unmatched", rows.unmatched());
    object.put("suspect_used", rows.suspect());
    return object;
  }

  private Map<String, Object> members(SlopeBreak found) {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("breaks", found.significant());
    object.put("p", rounded(found.pValue()));
    object.put("at", iso(found.atMs()));
    object.put("before", rounded(found.before()));
    object.put("after", rounded(found.after()));
    object.put("steps", found.steps());
    return object;
  }

  private Map<String, Object> members(MonthRatio month) {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("month", month.month().toString());
    object.put("pairs", month.pairs());
    object.put("own_mm", rounded(month.ownMm()));
    object.put("other_mm", rounded(month.otherMm()));
    object.put("ratio", orNull(month.ratio()));
    return object;
  }

  /** The double-mass curve as CSV: running sums at the end of each pair. */
  public String curve() {
    StringBuilder text = new StringBuilder("end,own_mm,other_mm,own_sum_mm,other_sum_mm\n");
    double own = 0;
    double other = 0;
    for (Pair pair : comparison.pairs()) {
      own += pair.ownMm();
      other += pair.otherMm();
      text.append(iso(pair.span().toMs()));
      for (double mm : new double[] {pair.ownMm(), pair.otherMm(), own, other}) {
        text.append(',').append(decimal(mm, 3));
      }
      text.append('\n');
    }
    return text.toString();
  }

  private String iso(long epochMs) {
    return StationTime.iso(epochMs, offset);
  }

  private static String pad(String text, int width) {
    return " ".repeat(Math.max(1, width - text.length())) + text;
  }

  private static String ratio(OptionalDouble ratio) {
    return ratio.isPresent() ? decimal(ratio.getAsDouble(), 3) : "-";
  }

  private static Object orNull(OptionalDouble ratio) {
    return ratio.isPresent() ? rounded(ratio.getAsDouble()) : null;
  }

  private static BigDecimal rounded(double value) {
    return new BigDecimal(decimal(value, 4));
  }

  private static String decimal(double value, int decimals) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
        : "-";
  }
}
