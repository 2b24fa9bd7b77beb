package org.rimebook.upkeep;

/**
 * A check weight and what a wire rings at under it.
 *
 * @param massKg mass on the wires [kg], the empty bucket not counted
 * @param frequencyHz frequency read [Hz]
 */
public record LoadReading(double massKg, double frequencyHz) {

  public LoadReading {
    if (!(massKg >= 0 && Double.isFinite(massKg))) {
      throw new IllegalArgumentException("a check weight is 0 kg or more, not " + massKg);
    }
    if (!(frequencyHz > 0 && Double.isFinite(frequencyHz))) {
      throw new IllegalArgumentException("a frequency is above 0 Hz, not " + frequencyHz);
    }
  }

  /**
   * Litres of water poured in, as a check weight.
   *
   * @param litres water [L]
   * @param waterDegC its temperature, 0 to 40 °C
   * @param frequencyHz frequency read [Hz]
   */
  public static LoadReading ofWater(double litres, double waterDegC, double frequencyHz) {
    return new LoadReading(litres * Water.densityKgPerM3(waterDegC) / 1000, frequencyHz);
  }
}
