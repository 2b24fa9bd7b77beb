package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimebook.station.Interval;

/** Finds out which wire it is that creeps or shifts in the differences of pairs. */
final class WireCreeps {

  /** A wire differs from a third by this share of what it differs from the second; own choice. */
  private static final double LIKEWISE = 0.6;

  private static final double MUCH_LESS = 0.4;

  private final Scene scene;
  private final Nights nights;
  private final Moments moments;
  private final List<Seen> seen = new ArrayList<>();

  private WireCreeps(Scene scene) {
    this.scene = scene;
    this.nights = new Nights(scene);
    this.moments = new Moments(scene);
  }

  /**
   * What a pair shows.
   *
   * @param one one wire
   * @param other the other, of a greater number
   */
  private record Seen(int one, int other, CreepSearch.Shape shape, double noiseMm) {}

  static List<WireCreep> of(Scene scene) {
    return new WireCreeps(scene).look();
  }

  private List<WireCreep> look() {
    int wires = scene.depths().wires();
    if (nights.count() < PairNights.LEAST_NIGHTS) {
      return List.of();
    }
    for (int one = 0; one < wires; one++) {
      for (int other = one + 1; other < wires; other++) {
        PairNights pair = PairNights.of(scene, nights, one, other);
        for (CreepSearch.Shape shape : new CreepSearch(pair).shapes()) {
          seen.add(new Seen(one, other, shape, pair.noiseMm()));
        }
      }
    }
    seen.sort(Comparator.comparingDouble(s -> -Math.abs(s.shape.mm())));
    List<WireCreep> creeps = new ArrayList<>();
    for (Seen each : seen) {
      told(each).ifPresent(creep -> add(creeps, creep));
    }
    return creeps;
  }

  /** Adds a creep unless it is known; two of one wire that touch are one. */
  private static void add(List<WireCreep> creeps, WireCreep creep) {
    for (int i = 0; i < creeps.size(); i++) {
      WireCreep known = creeps.get(i);
      boolean sameWire = creep.wires().stream().anyMatch(known.wires()::contains);
      boolean wide = known.creeps() && creep.creeps();
      if (sameWire && known.span().overlaps(creep.span())) {
        if (wide && known.wires().containsAll(creep.wires())) {
          creeps.set(i, joined(known, creep));
        }
        return;
      }
    }
    creeps.add(creep);
  }

  private static WireCreep joined(WireCreep known, WireCreep more) {
    Interval span =
        new Interval(
            Math.min(known.span().fromMs(), more.span().fromMs()),
            Math.max(known.span().toMs(), more.span().toMs()));
    return new WireCreep(known.wires(), true, span, known.mm(), known.noiseMm());
  }

  private Optional<WireCreep> told(Seen each) {
    return span(each)
        .map(
            span -> {
              List<Integer> wires = wires(each, span);
              double sign = wires.get(0) == each.other ? -1 : 1;
              CreepSearch.Shape shape = each.shape;
              return new WireCreep(wires, shape.creeps(), span, sign * shape.mm(), each.noiseMm);
            });
  }

  /** The wire that differs from every third as it does from the other; or both. */
  private List<Integer> wires(Seen each, Interval span) {
    int one = 0;
    int other = 0;
    int asked = 0;
    for (int third = 0; third < scene.depths().wires(); third++) {
      if (third == each.one || third == each.other) {
        continue;
      }
      double first = changeMm(each.one, third, each.shape, span) / each.shape.mm();
      double second = -changeMm(each.other, third, each.shape, span) / each.shape.mm();
      if (Double.isFinite(first) && Double.isFinite(second)) {
        asked++;
        one += first >= LIKEWISE && second <= MUCH_LESS ? 1 : 0;
        other += second >= LIKEWISE && first <= MUCH_LESS ? 1 : 0;
      }
    }
    if (asked > 0 && Math.max(one, other) == asked) {
      return List.of(one == asked ? each.one : each.other);
    }
    return List.of(each.one, each.other);
  }

  private double changeMm(int one, int other, CreepSearch.Shape shape, Interval span) {
    return shape.creeps()
        ? creepMm(one, other, shape)
        : moments.jumpMm(one, other, span.fromMs() + Moments.ABOUT_MS);
  }

  /**
   * How far two wires come apart over the time of a shape [mm], of which nothing else is known than
   * that load goes straight with it; NaN when they weren't both in use.
   */
  private double creepMm(int one, int other, CreepSearch.Shape shape) {
    PairNights pair = PairNights.of(scene, nights, one, other);
    boolean inside =
        Arrays.stream(pair.nights())
                .filter(n -> n >= shape.fromNight() && n <= shape.toNight())
                .count()
            >= 0.3 * (shape.toNight() - shape.fromNight() + 1);
    if (pair.size() < PairNights.LEAST_NIGHTS || !inside) {
      return Double.NaN;
    }
    for (Seen each : seen) {
      boolean samePair = each.one == Math.min(one, other) && each.other == Math.max(one, other);
      if (samePair && !overlap(each.shape, shape)) {
        pair.explain(i -> each.shape.at(pair.night(i)));
      }
    }
    return pair.suits(i -> shape.at(pair.night(i))).size();
  }

  private static boolean overlap(CreepSearch.Shape one, CreepSearch.Shape other) {
    return one.fromNight() <= other.toNight() && other.fromNight() <= one.toNight();
  }

  /** The time of a shape; nothing for a shift that isn't sudden. */
  private Optional<Interval> span(Seen each) {
    CreepSearch.Shape shape = each.shape;
    long endMs = scene.blocks().startMs(scene.blocks().size());
    if (!shape.creeps()) {
      return moments
          .of(each.one, each.other, nights.startMs(shape.fromNight()), shape.mm())
          .map(at -> new Interval(at - Moments.ABOUT_MS, at + Moments.ABOUT_MS));
    }
    long toMs =
        shape.lasts()
            ? endMs
            : moments
                .of(each.one, each.other, nights.startMs(shape.toNight() + 1), -shape.mm())
                .orElse(Math.min(endMs, nights.startMs(shape.toNight() + 1)));
    return Optional.of(new Interval(nights.startMs(shape.fromNight()), toMs));
  }
}
