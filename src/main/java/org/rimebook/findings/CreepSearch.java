package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Looks for creeps and shifts in the differences of two wires: of all straight creeps between two
 * nights and all shifts that stay it takes the one that suits best, takes it out, and looks again
 * (matching pursuit; Mallat and Zhang 1993, IEEE Trans. Signal Process. 41, 3397, from memory).
 */
final class CreepSearch {

  /**
   * Standard errors of independent nights that mean something; weather lasts, so many; own choice.
   */
  private static final double LEAST_SD = 14;

  /** Least creep [mm], its least rate [mm/d] and length [d]; own choice. */
  private static final double LEAST_CREEP_MM = 0.4;

  private static final double LEAST_RATE = 0.015;
  private static final int LEAST_DAYS = 5;

  /** Least shift [mm]; own choice. */
  private static final double LEAST_SHIFT_MM = 0.25;

  /** Creep or shift in noises of a night; own choice. */
  private static final double LEAST_NOISES = 5;

  /** How much better a shift suits than a creep when it is one; own choice. */
  private static final double CLEARLY = 1.02;

  private static final int STEPS = 60;
  private static final int MOST = 6;

  private final PairNights pair;

  CreepSearch(PairNights pair) {
    this.pair = pair;
  }

  /**
   * A creep or a shift.
   *
   * @param creeps whether it is a creep
   * @param fromNight first night of it
   * @param toNight last night of it
   * @param lasts whether it lasts to the last night
   * @param mm how far it comes [mm], positive when the first wire reads more
   */
  record Shape(boolean creeps, int fromNight, int toNight, boolean lasts, double mm) {

    /** A column of it, 1 at its end. */
    double at(int night) {
      if (night < fromNight || night > toNight) {
        return 0;
      }
      return creeps ? (night - fromNight + 0.5) / (toNight - fromNight + 0.5) : 1;
    }
  }

  /** What it is, from one index to another, which is outside. */
  private Shape shape(boolean creeps, int from, int to) {
    return new Shape(creeps, pair.night(from), pair.night(to - 1), to == pair.size(), 0);
  }

  private double sd(Shape shape) {
    return pair.suits(column(shape)).sd();
  }

  private IntToDoubleFunction column(Shape shape) {
    return i -> shape.at(pair.night(i));
  }

  /** What there is, the clearest first. */
  List<Shape> shapes() {
    List<Shape> shapes = new ArrayList<>();
    if (pair.size() < PairNights.LEAST_NIGHTS) {
      return shapes;
    }
    Optional<Shape> next = next();
    while (next.isPresent() && shapes.size() < MOST) {
      shapes.add(next.get());
      pair.explain(column(next.get()));
      pair.judgeNoise();
      next = next();
    }
    return shapes;
  }

  private Optional<Shape> next() {
    Best creep = refined(best(true));
    Best shift = refined(best(false));
    boolean shifts = shift.sd > CLEARLY * creep.sd;
    Best best = shifts ? shift : creep;
    if (best.sd < LEAST_SD) {
      return Optional.empty();
    }
    Shape shape = shape(best.creeps, best.from, best.to);
    double mm = pair.suits(column(shape)).size();
    int days = shape.toNight - shape.fromNight;
    double least =
        Math.max(LEAST_NOISES * pair.noiseMm(), shifts ? LEAST_SHIFT_MM : LEAST_CREEP_MM);
    boolean counts =
        Math.abs(mm) >= least
            && (shifts || days >= LEAST_DAYS && Math.abs(mm) >= LEAST_RATE * days);
    return counts
        ? Optional.of(new Shape(best.creeps, shape.fromNight, shape.toNight, shape.lasts, mm))
        : Optional.empty();
  }

  /**
   * The best so far.
   *
   * @param from first index
   * @param to index after the last
   */
  private record Best(boolean creeps, int from, int to, double sd) {}

  private Best best(boolean creeps) {
    Best best = new Best(creeps, 0, pair.size(), 0);
    int step = Math.max(1, pair.size() / STEPS);
    int shortest = creeps ? LEAST_DAYS : 2;
    for (int from = creeps ? 0 : shortest; from < pair.size() - shortest; from += step) {
      int earliest = creeps ? from + shortest : pair.size();
      for (int to = pair.size(); to >= earliest; to -= step) {
        best = better(best, from, to);
      }
    }
    return best;
  }

  private Best better(Best best, int from, int to) {
    double sd = sd(shape(best.creeps, from, to));
    return sd > best.sd ? new Best(best.creeps, from, to, sd) : best;
  }

  private Best refined(Best found) {
    int reach = Math.max(1, pair.size() / STEPS);
    Best best = found;
    for (int from = Math.max(0, found.from - reach); from <= found.from + reach; from++) {
      int earliest = found.creeps ? found.to - reach : found.to;
      for (int to = earliest; to <= Math.min(pair.size(), found.to + reach); to++) {
        if (to - from >= 2) {
          best = better(best, from, to);
        }
      }
    }
    return best;
  }
}
