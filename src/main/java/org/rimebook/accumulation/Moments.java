package org.rimebook.accumulation;

/** A weighted mixture of normal distributions, kept as its first moments. */
final class Moments {
  private final double origin;
  private double weight;
  private double first;
  private double second;

  Moments(double origin) {
    this.origin = origin;
  }

  void add(double w, double m, double v) {
    double d = m - origin;
    weight += w;
    first += w * d;
    second += w * (v + d * d);
  }

  double weight() {
    return weight;
  }

  double mean() {
    return origin + first / weight;
  }

  double variance() {
    double d = first / weight;
    return Math.max(0, second / weight - d * d);
  }
}
