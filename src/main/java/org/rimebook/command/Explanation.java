package org.rimebook.command;

import static org.rimebook.command.LabelledLines.counted;
import static org.rimebook.command.LabelledLines.text;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.rimebook.accumulation.CatchVariance;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.totals.Reason;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/** Why one total is what it is, as lines for a terminal. */
final class Explanation {

  private final SeasonResult result;
  private final List<TotalRow> rows;
  private final TotalRow row;
  private final Resolution resolution;
  private final Interval held;
  private final LabelledLines lines;

  /**
   * @param result the season
   * @param rows the table the total stands in
   * @param row the total
   * @param resolution resolution of the table
   */
  Explanation(SeasonResult result, List<TotalRow> rows, TotalRow row, Resolution resolution) {
    this.result = result;
    this.rows = rows;
    this.row = row;
    this.resolution = resolution;
    this.held = held(row);
    this.lines = new LabelledLines(result.season().sheet().utcOffset());
  }

  private static Interval held(TotalRow row) {
    long since = row.accumulatedSinceMs().orElse(row.interval().fromMs());
    return new Interval(since, row.interval().toMs());
  }

  List<String> lines() {
    lines.title(result.season().sheet().name() + ", " + lines.span(row.interval()));
    addTotal();
    lines.add("quality", row.quality().code());
    String label = "reasons";
    for (Reason reason : row.reasons()) {
      lines.add(label, reason.code() + ": " + reason.words());
      label = "";
    }
    lines.add("complete", text("%.0f %% covered by usable readings", 100 * row.completeness()));
    addWires();
    addWeights();
    new JudgementLines(result.estimate(), held).addTo(lines);
    addPieces();
    addEntries();
    addUncertainty();
    return lines.lines();
  }

  private void addTotal() {
    if (row.catchUnits().isPresent()) {
      lines.add(
          "total",
          resolution.toMm(row.catchUnits().getAsLong())
              + text(" mm, standard uncertainty %.3f mm", row.uncertaintyMm().orElseThrow()));
      if (row.accumulatedSinceMs().isPresent()) {
        lines.add("", "holds all that fell in " + lines.span(held) + "; so does what follows");
      }
      return;
    }
    Optional<TotalRow> holder =
        rows.stream()
            .filter(r -> r.accumulatedSinceMs().isPresent())
            .filter(r -> held(r).overlaps(row.interval()))
            .findFirst();
    lines.add(
        "total",
        holder
            .map(r -> "none of its own: what fell is in the total of " + lines.span(r.interval()))
            .orElse("none: what fell isn't known"));
  }

  private void addWires() {
    List<WireChange> wires = WireChange.of(result, held);
    String label = "wires";
    for (WireChange wire : wires) {
      lines.add(label, readings(wire) + wire.ends().map(e -> change(e, wires)).orElse(""));
      label = "";
    }
  }

  private static String readings(WireChange wire) {
    if (wire.used() == 0 && wire.leftOut().isEmpty()) {
      return text("%-10s no reading", wire.name());
    }
    String leftOut =
        wire.leftOut().entrySet().stream()
            .map(e -> e.getValue() + " " + e.getKey().code())
            .collect(Collectors.joining(", "));
    return text("%-10s %s used", wire.name(), counted(wire.used(), "reading"))
        + (leftOut.isEmpty() ? ", none left out" : ", left out: " + leftOut);
  }

  /** How a wire changed, and how far that is from the mean of the wires read at the same ends. */
  private static String change(WireChange.Ends ends, List<WireChange> wires) {
    String depths = text("; %.2f to %.2f mm", ends.firstMm(), ends.lastMm());
    if (!ends.compare()) {
      return depths + ", which don't compare";
    }
    DoubleSummaryStatistics alike =
        wires.stream()
            .flatMap(wire -> wire.ends().stream())
            .filter(ends::alike)
            .mapToDouble(WireChange.Ends::changeMm)
            .summaryStatistics();
    String change = depths + text(", %+.2f mm", ends.changeMm());
    return alike.getCount() < 2
        ? change
        : change + text(", %+.2f from their mean", ends.changeMm() - alike.getAverage());
  }

  /** Wires count alike; which of them, may change from reading to reading. */
  private void addWeights() {
    TreeMap<Integer, Integer> readings = new TreeMap<>();
    for (int i = 0; i < result.level().size(); i++) {
      long stamp = result.season().record().stampMs(result.level().row(i));
      if (stamp > held.fromMs() && stamp <= held.toMs()) {
        readings.merge(Integer.bitCount(result.level().wireMask(i)), 1, Integer::sum);
      }
    }
    String weights =
        readings.descendingMap().entrySet().stream()
            .map(e -> text("1/%d each in %s", e.getKey(), counted(e.getValue(), "reading")))
            .collect(Collectors.joining(", "));
    lines.add(
        "weights",
        weights.isEmpty() ? "no reading is used" : "the wires present count alike: " + weights);
  }

  private void addPieces() {
    String label = "pieces";
    for (PieceRun run : PieceRun.in(result.series(), held)) {
      lines.add(
          label, lines.span(run.interval()) + text("  %6.3f mm  ", run.catchMm()) + run.words());
      label = "";
    }
  }

  private void addEntries() {
    String label = "entries";
    for (Entry entry : result.season().notebook().inForce()) {
      Optional<Interval> span = entry.span().filter(held::overlaps);
      if (span.isPresent()) {
        lines.add(label, EntryWords.of(entry));
        lines.add("", lines.span(span.get()));
        label = "";
      }
    }
    if (!label.isEmpty()) {
      lines.add(label, "none touches it");
    }
  }

  /** What isn't of the series is of the printing, and of wires that disagree. */
  private void addUncertainty() {
    if (row.uncertaintyMm().isEmpty()) {
      return;
    }
    double whole = row.uncertaintyMm().getAsDouble();
    CatchVariance parts = result.series().variance(held.fromMs(), held.toMs());
    boolean disagree = row.reasons().contains(Reason.WIRES_DISAGREE);
    lines.add("u", text("%.3f mm is the root of the sum of the squares of", whole));
    addPart("levels at the ends of what fell, and totals that weren't measured", parts.levelsMm2());
    addPart("wandering of the level", parts.wanderingMm2());
    addPart("what all catch may be off by together", parts.commonMm2());
    addPart(
        disagree ? "rounding, and the wires' disagreement" : "rounding",
        whole * whole - parts.totalMm2());
  }

  private void addPart(String words, double variance) {
    lines.add("", text("%.3f mm  %s", Math.sqrt(Math.max(0, variance)), words));
  }
}
