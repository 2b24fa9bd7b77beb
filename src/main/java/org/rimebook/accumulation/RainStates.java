package org.rimebook.accumulation;

/**
 * The states the sky may be in between two readings, each with a mean rate and a spread, and the
 * chances of going from one to another. The rates are steps on a scale, not measurements: one dry
 * state whose level only drifts, and five wet ones from drizzle to cloudburst. The spread of a
 * state's rate equals its mean, and persists for {@link #CORRELATION_H}.
 *
 * <p>All figures are our own choice, orders of size and not measurements.
 */
final class RainStates {

  /** Number of states; the first are dry. */
  static final int COUNT = 7;

  /** Number of dry states: a spell that has settled, and a pause, which rain may yet end. */
  static final int DRY = 2;

  private static final int PAUSE = 1;

  /** Mean rates [mm/h]. */
  private static final double[] RATE_MM_PER_H = {0, 0, 0.06, 0.3, 1.5, 8, 60};

  /** How long a rate persists within a state [h]. */
  private static final double CORRELATION_H = 1.0 / 6;

  /** How long a dry state lasts on average [h]. */
  private static final double DRY_LASTS_H = 24;

  /** How long a pause lasts on average [h]; it ends in rain as often as it settles. */
  private static final double PAUSE_LASTS_H = 2;

  /** How long a wet state lasts on average before another wet state [h]. */
  private static final double WET_LASTS_H = 1;

  /** Share of the ends of a wet state that go to dry. */
  private static final double TO_DRY = 0.3;

  /** Shares of the wet states among those a dry spell ends in; heavy onsets are rarer. */
  private static final double[] ONSET = {0, 0, 0.4, 0.35, 0.2, 0.045, 0.005};

  private final double dryDriftMm2PerH;

  /**
   * @param dryDriftMm2PerH variance by which a dry level wanders [mm²/h]
   */
  RainStates(double dryDriftMm2PerH) {
    this.dryDriftMm2PerH = dryDriftMm2PerH;
  }

  /** The probability of each state when nothing is known. */
  static double[] prior() {
    double[] prior = new double[COUNT];
    prior[0] = 0.8;
    prior[PAUSE] = 0.1;
    for (int state = DRY; state < COUNT; state++) {
      prior[state] = 0.1 * ONSET[state];
    }
    return prior;
  }

  /** Mean rises, variances and transition probabilities over one step. */
  Step over(double hours) {
    double[] mean = new double[COUNT];
    double[] variance = new double[COUNT];
    double[][] to = new double[COUNT][COUNT];
    double stayDry = StrictMath.exp(-hours / DRY_LASTS_H);
    double stayPaused = StrictMath.exp(-hours / PAUSE_LASTS_H);
    double stayWet = StrictMath.exp(-hours / WET_LASTS_H);
    for (int state = 0; state < COUNT; state++) {
      double rate = RATE_MM_PER_H[state];
      mean[state] = rate * hours;
      variance[state] =
          rate * rate * hours * Math.max(hours, CORRELATION_H) + dryDriftMm2PerH * hours;
      for (int next = 0; next < COUNT; next++) {
        to[state][next] =
            state == 0
                ? fromDry(next, stayDry)
                : state == PAUSE ? fromPause(next, stayPaused) : fromWet(state, next, stayWet);
      }
    }
    return new Step(mean, variance, to);
  }

  private static double fromDry(int next, double stay) {
    return next == 0 ? stay : (1 - stay) * ONSET[next];
  }

  private static double fromPause(int next, double stay) {
    return next == PAUSE ? stay : (1 - stay) * (next == 0 ? 0.5 : 0.5 * ONSET[next]);
  }

  private static double fromWet(int state, int next, double stay) {
    if (next == state) {
      return stay;
    }
    if (next < DRY) {
      return next == PAUSE ? (1 - stay) * TO_DRY : 0;
    }
    double weight = 0;
    for (int other = DRY; other < COUNT; other++) {
      weight += other == state ? 0 : nearness(state, other);
    }
    return (1 - stay) * (1 - TO_DRY) * nearness(state, next) / weight;
  }

  private static double nearness(int a, int b) {
    return 1.0 / (1 << (2 * (Math.abs(a - b) - 1)));
  }

  /**
   * One step.
   *
   * @param meanMm mean rise by state [mm]
   * @param varianceMm2 variance of the rise by state [mm²]
   * @param to probability of going from the first state to the second
   */
  record Step(double[] meanMm, double[] varianceMm2, double[][] to) {}
}
