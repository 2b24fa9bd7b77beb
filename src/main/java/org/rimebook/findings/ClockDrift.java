package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A clock that gains or loses steadily and is set right now and then: each step is the time since
 * the step before times one rate.
 *
 * @param steps the corrections, in the order of time
 * @param rate what it gained [ms per ms]; negative when it lost
 */
record ClockDrift(List<ClockSteps.Step> steps, double rate) {

  /** Clocks in use are off by less [ms/ms]: five minutes a day; own choice. */
  private static final double MOST = 5 / 1440.0;

  /** How far the rates of the corrections may differ from the middle one; own choice. */
  private static final double ALIKE = 0.3;

  private static final int FEWEST_BACK = 2;
  private static final int FEWEST_HOLES = 3;
  private static final int MOST_HOLES = 12;
  private static final long MOST_MS = 60 * 60_000;

  ClockDrift {
    steps = List.copyOf(steps);
  }

  /**
   * Drift that explains all of some corrections.
   *
   * @param startMs when the record starts
   * @param back corrections of a clock that gains
   * @param holes what may be corrections of one that loses
   * @return none, or one
   */
  static List<ClockDrift> of(
      long startMs, List<ClockSteps.Step> back, List<ClockSteps.Step> holes) {
    List<ClockDrift> found = new ArrayList<>();
    if (back.size() >= FEWEST_BACK) {
      found.addAll(of(startMs, back));
    }
    List<ClockSteps.Step> small = holes.stream().filter(step -> step.byMs() < MOST_MS).toList();
    if (found.isEmpty() && small.size() >= FEWEST_HOLES && small.size() <= MOST_HOLES) {
      found.addAll(of(startMs, small));
    }
    return found;
  }

  private static List<ClockDrift> of(long startMs, List<ClockSteps.Step> steps) {
    List<Double> rates = new ArrayList<>();
    long last = startMs;
    for (ClockSteps.Step step : steps) {
      rates.add(step.byMs() / (double) Math.max(1, step.atMs() - last));
      last = step.resumedMs();
    }
    double middle = rates.stream().sorted(Comparator.naturalOrder()).toList().get(rates.size() / 2);
    // The first may follow a correction from before the record.
    boolean steady = rates.stream().skip(rates.size() > 2 ? 1 : 0).allMatch(r -> alike(r, middle));
    return steady && Math.abs(middle) < MOST ? List.of(new ClockDrift(steps, -middle)) : List.of();
  }

  private static boolean alike(double rate, double middle) {
    return Math.abs(rate - middle) <= ALIKE * Math.abs(middle);
  }

  /** The largest correction [ms]. */
  long mostMs() {
    return steps.stream().mapToLong(step -> Math.abs(step.byMs())).max().orElse(0);
  }
}
