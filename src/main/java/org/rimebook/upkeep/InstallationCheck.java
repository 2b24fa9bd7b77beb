package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;

/**
 * What a few minutes of readings tell of a gauge just set up, or looked after. Limits are own
 * choice where no source is named.
 *
 * @param at the time at rest
 * @param windMs mean wind [m/s]; empty when it isn't measured
 * @param wires the wires, in the order of the sheet
 * @param points what was looked at
 */
public record InstallationCheck(
    Interval at, OptionalDouble windMs, List<AtRest> wires, List<Point> points) {

  /** An empty bucket shows so little [mm]. */
  private static final double EMPTY_MM = 2;

  /** Scatter in calm and for each m/s of wind, of a post that stands firm [mm]. */
  private static final double CALM_MM = 0.1;

  private static final double PER_MS_MM = 0.05;

  /** Wires agree, and a wire repeats, within so much at rest [mm]. */
  private static final double AGREE_MM = 3;

  private static final double REPEAT_MM = 0.1;

  public InstallationCheck {
    wires = List.copyOf(wires);
    points = List.copyOf(points);
  }

  /** How a point came out. */
  public enum Outcome {
    GOOD("good"),
    LOOK("look again");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /**
   * One thing looked at.
   *
   * @param what what it is
   * @param outcome how it came out
   * @param words with numbers, and what to do
   */
  public record Point(String what, Outcome outcome, String words) {}

  /**
   * Checks an installation nobody tapped.
   *
   * @param season the season that holds the readings
   * @param at the time at rest
   * @param expectedMm depth of what is in the bucket; 0 for an empty one [mm]
   * @throws IllegalArgumentException in words with too few readings
   */
  public static InstallationCheck of(Season season, Interval at, double expectedMm) {
    return of(season, at, expectedMm, Optional.empty());
  }

  /**
   * Checks an installation.
   *
   * @param season the season that holds the readings
   * @param at the time at rest
   * @param expectedMm depth of what is in the bucket; 0 for an empty one [mm]
   * @param taps when somebody tapped the rim, after the time at rest; empty when nobody did
   * @throws IllegalArgumentException in words with too few readings
   */
  public static InstallationCheck of(
      Season season, Interval at, double expectedMm, Optional<Interval> taps) {
    List<AtRest> wires =
        IntStream.range(0, season.sheet().wires().size())
            .mapToObj(wire -> AtRest.of(season, wire, at))
            .toList();
    OptionalDouble windMs = AtRest.windMs(season, at);
    List<Point> points = new ArrayList<>();
    wires.forEach(wire -> points.add(depth(wire, expectedMm)));
    points.add(agreement(wires));
    wires.forEach(wire -> points.add(repeat(wire)));
    wires.forEach(wire -> points.add(noise(wire, windMs)));
    taps.ifPresent(tapped -> points.addAll(taps(season, at, tapped)));
    return new InstallationCheck(at, windMs, wires, points);
  }

  private static Point depth(AtRest wire, double expectedMm) {
    double off = wire.depthMm() - expectedMm;
    boolean good = Math.abs(off) <= EMPTY_MM + 0.01 * expectedMm;
    String words =
        text(
            "%.2f mm at %.2f Hz, %.1f mm expected", wire.depthMm(), wire.frequencyHz(), expectedMm);
    return point(
        "Depth of wire " + wire.wire(),
        good,
        words,
        "compare A, B and f0 with the wire's sheet, and which lead goes where");
  }

  private static Point agreement(List<AtRest> wires) {
    double least = wires.stream().mapToDouble(AtRest::depthMm).min().orElse(0);
    double most = wires.stream().mapToDouble(AtRest::depthMm).max().orElse(0);
    return point(
        "Wires agree",
        most - least <= AGREE_MM,
        text("%.2f mm between the lowest and the highest", most - least),
        "level the bucket; see that set screws are out and nothing touches");
  }

  private static Point repeat(AtRest wire) {
    double noise = wire.noiseMm() * 3 / Math.sqrt(wire.readings() / 2.0);
    return point(
        "Wire " + wire.wire() + " repeats",
        Math.abs(wire.repeatMm()) <= Math.max(REPEAT_MM, noise),
        text("%+.3f mm from the first half to the second", wire.repeatMm()),
        "wait until the bucket hangs still, then look for a wire that slips");
  }

  private static Point noise(AtRest wire, OptionalDouble windMs) {
    double letMm = CALM_MM + PER_MS_MM * windMs.orElse(0);
    String wind =
        windMs.isPresent()
            ? text("in wind of %.1f m/s", windMs.getAsDouble())
            : "the wind isn't measured";
    return point(
        "Noise of wire " + wire.wire(),
        wire.noiseMm() <= letMm,
        text("%.3f mm, %s", wire.noiseMm(), wind),
        "a post that moves, or a lead that chafes, shows here");
  }

  private static List<Point> taps(Season season, Interval at, Interval taps) {
    if (taps.fromMs() < at.toMs()) {
      throw new IllegalArgumentException("the taps come after the time at rest");
    }
    Interval after = new Interval(taps.toMs(), taps.toMs() + at.lengthMs());
    List<Point> points = new ArrayList<>();
    for (int wire = 0; wire < season.sheet().wires().size(); wire++) {
      TapTest test =
          TapTest.of(
              AtRest.depthsMm(season, wire, at),
              AtRest.depthsMm(season, wire, taps),
              AtRest.depthsMm(season, wire, after));
      points.add(
          point(
              "Taps on wire " + season.sheet().wires().get(wire).name(),
              test.answers() && test.comesBack(),
              text(
                  "jumps by %+.2f mm (scatter at rest %.3f mm), %+.2f mm after",
                  test.jumpMm(), test.scatterMm(), test.movedMm()),
              test.answers()
                  ? "it doesn't come back; look for what touches or a wire that slips"
                  : "it doesn't answer; see whether its lead and its wire are sound"));
    }
    return points;
  }

  private static Point point(String what, boolean good, String words, String remedy) {
    return good
        ? new Point(what, Outcome.GOOD, words + ".")
        : new Point(what, Outcome.LOOK, words + ": " + remedy + ".");
  }

  /** The outcome in a few words. */
  public String summary() {
    return good() ? "everything that readings tell is good" : "look again at some";
  }

  /** All of it in one paragraph, for an entry. */
  public String words() {
    String wind =
        windMs.isPresent() ? text("wind %.1f m/s", windMs.getAsDouble()) : "wind not measured";
    return "Installation check, "
        + wind
        + ". "
        + points.stream()
            .map(p -> p.what() + " (" + p.outcome().words() + "): " + p.words())
            .collect(Collectors.joining(" "));
  }

  /** Whether nothing has to be looked at again. */
  public boolean good() {
    return points.stream().allMatch(point -> point.outcome() == Outcome.GOOD);
  }
}
