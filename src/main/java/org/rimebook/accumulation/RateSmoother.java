package org.rimebook.accumulation;

/**
 * Smooths the level through one wet spell with a rate that wanders about its mean and comes back to
 * it (an Ornstein–Uhlenbeck rate under a Kalman filter and the Rauch–Tung–Striebel pass; Rauch,
 * Tung & Striebel 1965, AIAA J. 3, 1445; citation from memory). How far and how fast the rate
 * wanders isn't known: what each choice makes of the spell counts as likely as it makes the spell's
 * own readings.
 *
 * <p>The grids are our own choice.
 */
final class RateSmoother {

  /** Spread of the rate over its mean. */
  private static final double[] SPREADS = {0.5, 1, 2, 4};

  /** How long the rate remembers [h]. */
  private static final double[] MEMORIES_H = {1.0 / 30, 0.1, 0.3, 1, 3};

  /** No spell's mean rate is taken to be less [mm/h]. */
  private static final double LEAST_RATE_MM_PER_H = 0.02;

  /** A choice so much less likely than the best says nothing that shows. */
  private static final double LEAST_WEIGHT = 0.01;

  private final LevelNodes nodes;
  private final double[] noiseMm2;
  private final double driftMm2PerH;
  private final int from;
  private final int size;

  private final double[] x;
  private final double[] r;
  private final double[] xx;
  private final double[] xr;
  private final double[] rr;
  private final double[] hours;

  private double meanRate;
  private double spread;
  private double memoryH;
  private Step step;
  private double stepHours = Double.NaN;

  /**
   * @param nodes the level without drift
   * @param smoothing how it was smoothed
   * @param from first node of the spell, the last before anything fell
   * @param to last node of the spell
   */
  RateSmoother(LevelNodes nodes, Smoothing smoothing, int from, int to) {
    this.nodes = nodes;
    this.noiseMm2 = smoothing.noiseMm2();
    this.driftMm2PerH = smoothing.driftMm2PerH();
    this.from = from;
    this.size = to - from + 1;
    this.x = new double[size];
    this.r = new double[size];
    this.xx = new double[size];
    this.xr = new double[size];
    this.rr = new double[size];
    this.hours = new double[size];
    for (int i = 1; i < size; i++) {
      hours[i] = nodes.hours(from + i - 1);
    }
  }

  /**
   * The level [mm] and its variance [mm²] at each node of the spell.
   *
   * @param levelMm level by node
   * @param levelMm2 variance by node
   */
  record Path(double[] levelMm, double[] levelMm2) {}

  /**
   * Smooths between the levels found for the spell's ends.
   *
   * @param start level before it [mm] and its variance [mm²]
   * @param end level after it [mm] and its variance [mm²]
   */
  Path smooth(double[] start, double[] end) {
    double lasts = 0;
    for (double h : hours) {
      lasts += h;
    }
    meanRate = Math.max(LEAST_RATE_MM_PER_H, (end[0] - start[0]) / lasts);
    double[] weight = weights(start, end);
    double[] levelMm = new double[size];
    double[] levelMm2 = new double[size];
    double whole = 0;
    for (int choice = 0; choice < weight.length; choice++) {
      if (weight[choice] >= LEAST_WEIGHT) {
        filter(start, end, choice);
        smoothBackwards();
        whole += weight[choice];
        for (int i = 0; i < size; i++) {
          double share = weight[choice] / whole;
          double apart = x[i] - levelMm[i];
          levelMm[i] += share * apart;
          levelMm2[i] += share * (xx[i] - levelMm2[i] + (1 - share) * apart * apart);
        }
      }
    }
    return new Path(levelMm, levelMm2);
  }

  /** How likely each choice makes the readings, in parts of the likeliest. */
  private double[] weights(double[] start, double[] end) {
    double[] weight = new double[SPREADS.length * MEMORIES_H.length];
    double best = Double.NEGATIVE_INFINITY;
    for (int choice = 0; choice < weight.length; choice++) {
      weight[choice] = filter(start, end, choice);
      best = Math.max(best, weight[choice]);
    }
    for (int choice = 0; choice < weight.length; choice++) {
      weight[choice] = StrictMath.exp(weight[choice] - best);
    }
    return weight;
  }

  /** Runs the filter; returns the log likelihood of the readings. */
  private double filter(double[] start, double[] end, int choice) {
    spread = SPREADS[choice / MEMORIES_H.length] * meanRate;
    memoryH = MEMORIES_H[choice % MEMORIES_H.length];
    stepHours = Double.NaN;
    double likelihood = 0;
    x[0] = start[0];
    xx[0] = start[1];
    r[0] = 0;
    xr[0] = 0;
    rr[0] = spread * spread;
    for (int i = 1; i < size; i++) {
      predict(i);
      boolean last = i == size - 1;
      double reading = last ? end[0] : nodes.levelMm()[from + i];
      double noise = last ? end[1] : noiseMm2[from + i];
      double innovation = reading - x[i];
      double expected = xx[i] + noise;
      likelihood -= 0.5 * (innovation * innovation / expected + StrictMath.log(expected));
      double kx = xx[i] / expected;
      double kr = xr[i] / expected;
      x[i] += kx * innovation;
      r[i] += kr * innovation;
      rr[i] -= kr * xr[i];
      xr[i] -= kx * xr[i];
      xx[i] -= kx * xx[i];
    }
    return likelihood;
  }

  private void predict(int i) {
    Step s = step(hours[i]);
    x[i] = x[i - 1] + meanRate * hours[i] + s.reach * r[i - 1];
    r[i] = s.kept * r[i - 1];
    double a = s.reach;
    double k = s.kept;
    xx[i] = xx[i - 1] + 2 * a * xr[i - 1] + a * a * rr[i - 1] + s.qxx;
    xr[i] = k * (xr[i - 1] + a * rr[i - 1]) + s.qxr;
    rr[i] = k * k * rr[i - 1] + s.qrr;
  }

  private Step step(double h) {
    if (h != stepHours) {
      stepHours = h;
      step = new Step(h);
    }
    return step;
  }

  /** One step of the rate and of the level it adds up to, exact for the given time. */
  private final class Step {
    private final double kept;
    private final double reach;
    private final double qxx;
    private final double qxr;
    private final double qrr;

    Step(double h) {
      double t = h / memoryH;
      kept = StrictMath.exp(-t);
      reach = memoryH * (1 - kept);
      double s2 = spread * spread;
      qrr = s2 * (1 - kept * kept);
      qxr = s2 * memoryH * (1 - kept) * (1 - kept);
      double bracket = 2 * t - 3 + 4 * kept - kept * kept;
      qxx = s2 * memoryH * memoryH * Math.max(0, bracket) + driftMm2PerH * h;
    }
  }

  private void smoothBackwards() {
    for (int i = size - 2; i >= 0; i--) {
      Step s = step(hours[i + 1]);
      double a = s.reach;
      double k = s.kept;
      double px = x[i] + meanRate * hours[i + 1] + a * r[i];
      double pr = k * r[i];
      double cxx = xx[i] + a * xr[i];
      double cxr = k * xr[i];
      double crx = xr[i] + a * rr[i];
      double crr = k * rr[i];
      double pxx = xx[i] + 2 * a * xr[i] + a * a * rr[i] + s.qxx;
      double pxr = k * (xr[i] + a * rr[i]) + s.qxr;
      double prr = k * k * rr[i] + s.qrr;
      double det = Math.max(1e-300, pxx * prr - pxr * pxr);
      double gxx = (cxx * prr - cxr * pxr) / det;
      double gxr = (cxr * pxx - cxx * pxr) / det;
      double grx = (crx * prr - crr * pxr) / det;
      double grr = (crr * pxx - crx * pxr) / det;
      double dx = x[i + 1] - px;
      double dr = r[i + 1] - pr;
      double dxx = xx[i + 1] - pxx;
      double dxr = xr[i + 1] - pxr;
      double drr = rr[i + 1] - prr;
      x[i] += gxx * dx + gxr * dr;
      r[i] += grx * dx + grr * dr;
      double newXx = xx[i] + gxx * (gxx * dxx + gxr * dxr) + gxr * (gxx * dxr + gxr * drr);
      double newXr = xr[i] + grx * (gxx * dxx + gxr * dxr) + grr * (gxx * dxr + gxr * drr);
      double newRr = rr[i] + grx * (grx * dxx + grr * dxr) + grr * (grx * dxr + grr * drr);
      xx[i] = Math.max(0, newXx);
      xr[i] = newXr;
      rr[i] = Math.max(0, newRr);
    }
  }
}
