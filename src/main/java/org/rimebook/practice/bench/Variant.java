package org.rimebook.practice.bench;

import java.util.Locale;

/** What can be made otherwise in a winter to see whether an estimator leans on it. */
public enum Variant {
  /** The winter as its class has it. */
  PLAIN("as the class has it"),
  /** Twice the noise. */
  DOUBLED_NOISE("twice the noise of single readings"),
  /** Noise by Student's t with three degrees of freedom. */
  HEAVY_TAILS("noise by Student's t with 3 degrees of freedom"),
  /** All noise a first-order autoregression. */
  AUTOREGRESSIVE("all noise a first-order autoregression of minutes"),
  /** Storms by a random cascade, which no plain winter has. */
  OTHER_STORMS("storms by a random cascade, which no plain winter has");

  private final String words;

  Variant(String words) {
    this.words = words;
  }

  /** The name in tables and on the command line. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it is, in words. */
  public String words() {
    return words;
  }
}
