package org.rimebook.practice.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.SeasonBuilder;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

/** A winter under way, into which faults are put; each is written down with its place. */
public final class Planting {

  private static final long HOUR_MS = 3_600_000;
  private static final long CLEAR_MS = 6 * HOUR_MS;

  private final SeasonBuilder builder;
  private final StationSheet sheet;
  private final Interval span;
  private final Draws draws;
  private Precipitation falling;
  private DoubleUnaryOperator noiseMm = windMs -> 0;
  private final List<Interval> taken = new ArrayList<>();
  private final List<Planted> planted = new ArrayList<>();
  private UnaryOperator<SeasonRecord> logger = UnaryOperator.identity();
  private UnaryOperator<StationSheet> writer = UnaryOperator.identity();

  Planting(
      SeasonBuilder builder,
      StationSheet sheet,
      Interval span,
      Draws draws,
      Precipitation falling) {
    this.builder = builder;
    this.sheet = sheet;
    this.span = span;
    this.draws = draws;
    this.falling = falling;
  }

  /** The season. */
  public SeasonBuilder builder() {
    return builder;
  }

  /** The gauge as it is. */
  public StationSheet sheet() {
    return sheet;
  }

  /** Name of a wire. */
  public String wire(int wire) {
    return sheet.wires().get(wire).name();
  }

  /** The season's span. */
  public Interval span() {
    return span;
  }

  /** Chance. */
  public Draws draws() {
    return draws;
  }

  /** What falls. */
  public Precipitation falling() {
    return falling;
  }

  /** Lets something else fall. */
  public void falling(Precipitation other) {
    falling = other;
    builder.fell(other);
  }

  /** Noise that readings have with nothing wrong, in a wind [m/s]; standard deviation [mm]. */
  public double noiseMm(double windMs) {
    return noiseMm.applyAsDouble(windMs);
  }

  void noise(DoubleUnaryOperator mmInWindMs) {
    noiseMm = mmInWindMs;
  }

  /** Whether the interval stands clear of the season's ends and all others, which it then joins. */
  public boolean take(Interval interval) {
    Interval wide = new Interval(interval.fromMs() - CLEAR_MS, interval.toMs() + CLEAR_MS);
    boolean inside = wide.fromMs() > span.fromMs() && wide.toMs() < span.toMs();
    boolean free = inside && taken.stream().noneMatch(wide::overlaps);
    if (free) {
      taken.add(interval);
    }
    return free;
  }

  /** Writes down a fault that has to be found. */
  public void due(FindingKind kind, Interval where, String... wires) {
    planted.add(new Planted(kind, where, List.of(wires), true));
  }

  /** Writes down what may be found, or not, since it is too small or only goes with a fault. */
  public void may(FindingKind kind, Interval where, String... wires) {
    planted.add(new Planted(kind, where, List.of(wires), false));
  }

  /** What was written down so far shows in the record as much later. */
  public void showsLater(long byMs) {
    planted.replaceAll(
        p ->
            new Planted(
                p.kind(),
                new Interval(p.span().fromMs() + byMs, p.span().toMs() + byMs),
                p.wires(),
                p.due()));
  }

  /** The logger makes another record of the readings, after any it made before. */
  public void logs(UnaryOperator<SeasonRecord> otherwise) {
    UnaryOperator<SeasonRecord> before = logger;
    logger = record -> otherwise.apply(before.apply(record));
  }

  /** Somebody wrote another station sheet than the true one. */
  public void writes(UnaryOperator<StationSheet> otherwise) {
    UnaryOperator<StationSheet> before = writer;
    writer = written -> otherwise.apply(before.apply(written));
  }

  List<Planted> planted() {
    return List.copyOf(planted);
  }

  MarkedSeason.AsWritten asWritten() {
    return new MarkedSeason.AsWritten(logger, writer);
  }
}
