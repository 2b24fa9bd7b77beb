package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rimebook.depth.Robust;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Depths at the start of a stretch, and rises in it, of each wire against the middle one. */
final class WireComparison {

  /** Offsets of sound wires at the start [mm], and as a share of the depth; own choice. */
  private static final double OFFSET_MM = 3;

  private static final double OFFSET_SHARE = 0.015;

  /** Rises of sound wires agree this closely; own choice, tilt included. */
  private static final double RISE_OFF = 0.025;

  /** With an offset as well, tilt no longer explains this much; own choice. */
  private static final double RISE_OFF_WITH_OFFSET = 0.01;

  private static final double STANDARD_ERRORS = 2.5;

  /** One wire is the odd one when the next is this many times less off; own choice. */
  private static final double ODD_FACTOR = 2;

  /** Events and rise that tell something; own choice. */
  private static final int LEAST_EVENTS = 8;

  private static final double LEAST_RISE_MM = 30;

  /** Hours the depth at the start is taken from; own choice. */
  private static final int START_HOURS = 48;

  private final Scene scene;
  private final SharedHours hours;
  private final int[] start;
  private final WetRises rises;

  WireComparison(Scene scene, SharedHours hours, int fromHour, int toHour) {
    this.scene = scene;
    this.hours = hours;
    List<Interval> exchanged =
        scene.found().stream()
            .filter(finding -> finding.kind() == FindingKind.EXCHANGED_WIRES)
            .map(Finding::span)
            .toList();
    this.start =
        IntStream.range(fromHour, toHour)
            .filter(hours::known)
            .filter(hour -> exchanged.stream().noneMatch(e -> e.contains(hours.startMs(hour))))
            .limit(START_HOURS)
            .toArray();
    List<Interval> closed =
        Stream.concat(exchanged.stream(), scene.spans(Entry.ServiceVisit.class).stream()).toList();
    this.rises = new WetRises(hours, fromHour, toHour, closed);
  }

  /**
   * What stands out.
   *
   * @param wires the odd wire, or all when there is no telling
   * @param words with numbers
   * @param harmful whether the totals are better without it
   * @param strength how sure
   */
  record Odd(List<Integer> wires, String words, boolean harmful, double strength) {

    Odd {
      wires = List.copyOf(wires);
    }
  }

  /** Depth of the middle wire at the start [mm]; NaN when it isn't known. */
  double startMm() {
    double[] depths = startDepths();
    return depths.length == 0 ? Double.NaN : Robust.medianInPlace(depths, depths.length);
  }

  double capacityMm() {
    return scene.sheet().gauge().capacityMm().orElse(Double.POSITIVE_INFINITY);
  }

  private double[] startDepths() {
    return start.length < START_HOURS / 2
        ? new double[0]
        : IntStream.range(0, hours.wires()).mapToDouble(this::startMm).toArray();
  }

  private double startMm(int wire) {
    double[] depths = Arrays.stream(start).mapToDouble(h -> hours.depthMm(wire, h)).toArray();
    return Robust.medianInPlace(depths, depths.length);
  }

  /** The wire whose calibration doesn't suit. */
  Optional<Odd> odd() {
    double[] depths = startDepths();
    if (depths.length < 2) {
      return Optional.empty();
    }
    double middle = startMm();
    double limitMm = OFFSET_MM + OFFSET_SHARE * Math.abs(middle);
    double[] offset = Arrays.stream(depths).map(d -> (d - middle) / limitMm).toArray();
    Optional<double[]> rise = riseOff();
    int byRise = rise.map(WireComparison::odd).orElse(-1);
    int byOffset = odd(offset);
    boolean riseOff = byRise >= 0 && Math.abs(rise.get()[byRise]) > 1;
    boolean offsetOff =
        byOffset >= 0 && Math.abs(offset[byOffset]) > 1 || depths.length == 2 && apart(offset);
    if (!riseOff && !offsetOff) {
      return Optional.empty();
    }
    if (depths.length == 2) {
      return Optional.of(new Odd(List.of(0, 1), words(depths, 0, 1), false, 0.6));
    }
    int wire = riseOff ? byRise : byOffset;
    boolean harmful = riseOff || risesOtherwise(wire);
    double strength = Math.min(1, 0.5 + (harmful ? 0.2 : 0) + 0.1 * Math.abs(offset[wire]));
    return Optional.of(new Odd(List.of(wire), words(depths, wire, -1), harmful, strength));
  }

  private static boolean apart(double[] offset) {
    return Math.abs(offset[0] - offset[1]) > 1;
  }

  private boolean told() {
    return rises.size() >= LEAST_EVENTS && rises.totalMm() >= LEAST_RISE_MM;
  }

  /** How far the rises are off, in limits, with their sign; 0 where they may not be. */
  private Optional<double[]> riseOff() {
    if (!told()) {
      return Optional.empty();
    }
    double[] off = new double[hours.wires()];
    for (int wire = 0; wire < off.length; wire++) {
      WetRises.Ratio ratio = rises.ratio(wire);
      double surely = Math.max(0, ratio.surelyOff(STANDARD_ERRORS)) / RISE_OFF;
      off[wire] = ratio.lasting() ? Math.copySign(surely, ratio.ratio() - 1) : 0;
    }
    return Optional.of(off);
  }

  private boolean risesOtherwise(int wire) {
    return told() && rises.ratio(wire).surelyOff(STANDARD_ERRORS) > RISE_OFF_WITH_OFFSET;
  }

  /** The one that is clearly further off than every other; −1 when there is none. */
  private static int odd(double[] off) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, off.length).boxed().toList());
    order.sort(Comparator.comparingDouble(wire -> -Math.abs(off[wire])));
    double most = Math.abs(off[order.get(0)]);
    double next = Math.abs(off[order.get(1)]);
    return most > ODD_FACTOR * next ? order.get(0) : -1;
  }

  private String words(double[] depths, int wire, int other) {
    double middle = startMm();
    String start =
        other < 0
            ? Words.text(
                "%s reads %.1f mm at the start, the middle wire %.1f mm",
                scene.wireName(wire), depths[wire], middle)
            : Words.text(
                "%s reads %.1f mm at the start, %s %.1f mm",
                scene.wireName(wire), depths[wire], scene.wireName(other), depths[other]);
    if (!told()) {
      return start + ".";
    }
    WetRises.Ratio ratio = rises.ratio(wire);
    return start
        + Words.text(
            "; over %.0f mm of precipitation it rises %.1f %% %s (± %.1f %%).",
            rises.totalMm(),
            100 * Math.abs(ratio.ratio() - 1),
            ratio.ratio() > 1 ? "more" : "less",
            200 * ratio.standardError());
  }
}
