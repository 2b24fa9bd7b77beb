package org.rimebook.season.why;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.ArrayList;
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

/** The sections of an explanation. */
final class Sections {

  private final SeasonResult result;
  private final List<TotalRow> rows;
  private final TotalRow row;
  private final Resolution resolution;
  private final Interval held;

  Sections(SeasonResult result, List<TotalRow> rows, TotalRow row, Resolution resolution) {
    this.result = result;
    this.rows = rows;
    this.row = row;
    this.resolution = resolution;
    this.held = held(row);
  }

  /** The stretch of time of which a total holds the catch. */
  static Interval held(TotalRow row) {
    long since = row.accumulatedSinceMs().orElse(row.interval().fromMs());
    return new Interval(since, row.interval().toMs());
  }

  List<Section> all() {
    List<Section> sections = new ArrayList<>();
    sections.add(total());
    sections.add(words("quality", row.quality().code()));
    sections.add(reasons());
    sections.add(
        words("complete", text("%.0f %% covered by usable readings", 100 * row.completeness())));
    sections.add(wires());
    sections.add(weights());
    sections.addAll(new Judgement(result.estimate(), held).sections());
    sections.add(pieces());
    sections.add(entries());
    sections.add(FoundHere.section(result.findings(), held));
    uncertainty().ifPresent(sections::add);
    sections.removeIf(section -> section.lines().isEmpty());
    return sections;
  }

  private static Section words(String label, String words) {
    return Section.of(label, new Line.Words(words));
  }

  private Section total() {
    if (row.catchUnits().isPresent()) {
      List<Line> lines = new ArrayList<>();
      lines.add(
          new Line.Words(
              resolution.toMm(row.catchUnits().getAsLong())
                  + text(" mm, standard uncertainty %.3f mm", row.uncertaintyMm().orElseThrow())));
      if (row.accumulatedSinceMs().isPresent()) {
        lines.add(new Line.OfSpan("holds all that fell in ", held, "; so does what follows"));
      }
      return new Section("total", lines);
    }
    return rows.stream()
        .filter(r -> r.accumulatedSinceMs().isPresent())
        .filter(r -> held(r).overlaps(row.interval()))
        .findFirst()
        .map(
            r ->
                Section.of(
                    "total",
                    new Line.OfSpan(
                        "none of its own: what fell is in the total of ", r.interval(), "")))
        .orElseGet(() -> words("total", "none: what fell isn't known"));
  }

  private Section reasons() {
    List<Line> lines = new ArrayList<>();
    for (Reason reason : row.reasons()) {
      lines.add(new Line.Words(reason.code() + ": " + reason.words()));
    }
    return new Section("reasons", lines);
  }

  private Section wires() {
    List<WireChange> wires = WireChange.of(result, held);
    return new Section(
        "wires",
        wires.stream()
            .<Line>map(
                wire ->
                    new Line.OfWire(
                        wire.name(),
                        readings(wire) + wire.ends().map(e -> change(e, wires)).orElse("")))
            .toList());
  }

  private static String readings(WireChange wire) {
    if (wire.used() == 0 && wire.leftOut().isEmpty()) {
      return "no reading";
    }
    String leftOut =
        wire.leftOut().entrySet().stream()
            .map(e -> e.getValue() + " " + e.getKey().code())
            .collect(Collectors.joining(", "));
    return counted(wire.used(), "reading")
        + " used"
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
  private Section weights() {
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
    return words(
        "weights",
        weights.isEmpty() ? "no reading is used" : "the wires present count alike: " + weights);
  }

  private Section pieces() {
    return new Section(
        "pieces",
        PieceRun.in(result.series(), held).stream()
            .<Line>map(run -> new Line.OfPiece(run.interval(), run.catchMm(), run.words()))
            .toList());
  }

  private Section entries() {
    List<Line> lines = new ArrayList<>();
    for (Entry entry : result.season().notebook().inForce()) {
      entry
          .span()
          .filter(held::overlaps)
          .ifPresent(span -> lines.add(new Line.OfEntry(entry, span)));
    }
    return lines.isEmpty() ? words("entries", "none touches it") : new Section("entries", lines);
  }

  /** What isn't of the series is of the printing, and of wires that disagree. */
  private Optional<Section> uncertainty() {
    if (row.uncertaintyMm().isEmpty()) {
      return Optional.empty();
    }
    double whole = row.uncertaintyMm().getAsDouble();
    CatchVariance parts = result.series().variance(held.fromMs(), held.toMs());
    boolean disagree = row.reasons().contains(Reason.WIRES_DISAGREE);
    return Optional.of(
        Section.of(
            "u",
            new Line.Words(text("%.3f mm is the root of the sum of the squares of", whole)),
            part(
                "levels at the ends of what fell, and totals that weren't measured",
                parts.levelsMm2()),
            part("wandering of the level", parts.wanderingMm2()),
            part("what all catch may be off by together", parts.commonMm2()),
            part(
                disagree ? "rounding, and the wires' disagreement" : "rounding",
                whole * whole - parts.totalMm2())));
  }

  private static Line part(String words, double variance) {
    return new Line.Part(text("%.3f mm", Math.sqrt(Math.max(0, variance))), words);
  }
}
