package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

/**
 * Freezing points of a liquid in water by its share, as published, straight between the rows and
 * from clean water at 0 °C to the first. It is never carried beyond its last row.
 *
 * @param percent shares in rising order [%]
 * @param degC freezing point of each, falling [°C]
 */
record FreezingTable(double[] percent, double[] degC) {

  FreezingTable {
    percent = percent.clone();
    degC = degC.clone();
  }

  private int last() {
    return percent.length - 1;
  }

  /** Freezing point of a share of 0 to 1 [°C]. */
  Known degCAt(double share) {
    double asked = 100 * share;
    if (!(asked >= 0)) {
      return Known.not("a share of " + text("%.1f %%", asked) + " isn't one");
    }
    if (asked > percent[last()]) {
      return Known.not(
          text(
              "the mixture holds %.0f %%, and the table ends at %.0f %% (%.1f °C): more isn't"
                  + " known, and needn't freeze lower",
              asked, percent[last()], degC[last()]));
    }
    return Known.of(between(asked, percent, degC));
  }

  /** The least share, 0 to 1, that doesn't freeze at a temperature [°C]. */
  Known shareFor(double coldDegC) {
    if (coldDegC >= 0) {
      return Known.of(0);
    }
    if (coldDegC < degC[last()]) {
      return Known.not(
          text(
              "the table ends at %.1f °C (%.0f %%): what keeps from freezing at %.1f °C isn't"
                  + " known",
              degC[last()], percent[last()], coldDegC));
    }
    double[] warmth = new double[degC.length];
    for (int row = 0; row < warmth.length; row++) {
      warmth[row] = -degC[row];
    }
    return Known.of(between(-coldDegC, warmth, percent) / 100);
  }

  private static double between(double asked, double[] rising, double[] values) {
    double fromAt = 0;
    double fromValue = 0;
    for (int row = 0; row < rising.length; row++) {
      if (asked <= rising[row]) {
        double part = (asked - fromAt) / (rising[row] - fromAt);
        return fromValue + part * (values[row] - fromValue);
      }
      fromAt = rising[row];
      fromValue = values[row];
    }
    throw new IllegalArgumentException(asked + " is beyond the table");
  }
}
