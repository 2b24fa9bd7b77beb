package org.rimebook.upkeep;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Liquids that keep a bucket from freezing, with what is published of them. Mixtures of two aren't
 * in a table that could be checked, and aren't offered.
 */
public enum Antifreeze {
  /**
   * Volume shares: Lange's Handbook of Chemistry, 15th ed., Table 5.13; its specific gravities are
   * at 15.6 °C. Density pure: from memory.
   */
  PROPYLENE_GLYCOL(
      "propylene glycol",
      new FreezingTable(
          new double[] {5, 10, 15, 20, 25, 30, 35, 40, 45, 50},
          new double[] {-1.1, -2.2, -3.9, -6.7, -8.9, -12.8, -16.1, -20.6, -26.7, -33.3}),
      new double[] {1.004, 1.006, 1.012, 1.017, 1.020, 1.024, 1.028, 1.032, 1.037, 1.040},
      new Liquid(1.036, true, "Lange's Handbook of Chemistry, 15th ed., Table 5.13"),
      "Not classified as dangerous (from memory); read its data sheet all the same."),
  /** As propylene glycol, up to 40 % by volume. */
  METHANOL(
      "methanol",
      new FreezingTable(
          new double[] {5, 10, 15, 20, 25, 30, 35, 40},
          new double[] {-2.2, -5.0, -8.3, -11.7, -15.6, -20.0, -25.0, -30.0}),
      new double[] {0.993, 0.986, 0.980, 0.974, 0.968, 0.963, 0.956, 0.949},
      new Liquid(0.791, true, "Lange's Handbook of Chemistry, 15th ed., Table 5.13"),
      "Poisonous if swallowed, breathed or on the skin; blinds; its vapour burns (from memory)."),
  /** Mass shares from the same table; density pure from memory. */
  ETHANOL(
      "ethanol",
      new FreezingTable(
          new double[] {11.3, 20.3, 29.9, 39.0, 46.3, 56.1, 71.9},
          new double[] {-5.0, -10.6, -18.9, -28.7, -33.9, -41.0, -51.3}),
      new double[] {},
      new Liquid(0.789, false, "Lange's Handbook of Chemistry, 15th ed., Table 5.13"),
      "Its vapour burns; irritates the eyes (from memory)."),
  /** Mass shares and density from memory; offered only when asked for. */
  ETHYLENE_GLYCOL(
      "ethylene glycol",
      new FreezingTable(
          new double[] {10, 20, 30, 40, 50}, new double[] {-3.2, -7.8, -14.1, -22.3, -33.8}),
      new double[] {},
      new Liquid(1.113, false, ""),
      "Poisonous if swallowed, and sweet: keep from children and animals (from memory).");

  private final String words;
  private final FreezingTable freezing;
  private final double[] gravity;
  private final Liquid liquid;
  private final String hazard;

  Antifreeze(String words, FreezingTable freezing, double[] gravity, Liquid liquid, String hazard) {
    this.words = words;
    this.freezing = freezing;
    this.gravity = gravity;
    this.liquid = liquid;
    this.hazard = hazard;
  }

  /**
   * The pure liquid.
   *
   * @param kgPerL density at 20 °C [kg/L], from memory
   * @param byVolume whether its table goes by volume; by mass otherwise
   * @param source where its table was checked; empty when it is from memory
   */
  private record Liquid(double kgPerL, boolean byVolume, String source) {}

  /** The liquid a word on the command line stands for. */
  public static Optional<Antifreeze> ofCode(String code) {
    return Stream.of(values()).filter(value -> value.code().equals(code)).findFirst();
  }

  /** The word for it on the command line. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Its name. */
  public String words() {
    return words;
  }

  /** Where its freezing points are from; empty when they are only remembered. */
  public Optional<String> source() {
    return Optional.of(liquid.source).filter(source -> !source.isEmpty());
  }

  /** What it does to those who handle it. */
  public String hazard() {
    return hazard;
  }

  /**
   * Freezing point of a mixture with water [°C], volumes taken before they are mixed.
   *
   * @param antifreezeL pure antifreeze [L]
   * @param waterL water [L]
   */
  public Known freezingDegC(double antifreezeL, double waterL) {
    double of = amount(antifreezeL);
    return of + waterL > 0 ? freezing.degCAt(of / (of + waterL)) : Known.not("the bucket is empty");
  }

  /**
   * The most water that may come to some antifreeze before it freezes at a temperature [L].
   *
   * @param antifreezeL pure antifreeze [L]
   * @param coldDegC coldest expected [°C]
   */
  public Known mostWaterL(double antifreezeL, double coldDegC) {
    Known share = freezing.shareFor(coldDegC);
    if (share.value().isEmpty()) {
      return share;
    }
    double least = share.value().getAsDouble();
    return least == 0
        ? Known.not("no antifreeze is needed at " + coldDegC + " °C")
        : Known.of(amount(antifreezeL) * (1 - least) / least);
  }

  /**
   * Pure antifreeze that keeps some water from freezing at a temperature [L].
   *
   * @param waterL water [L]
   * @param coldDegC coldest expected [°C]
   */
  public Known neededL(double waterL, double coldDegC) {
    Known share = freezing.shareFor(coldDegC);
    if (share.value().isEmpty()) {
      return share;
    }
    double least = share.value().getAsDouble();
    return Known.of(waterL * least / (1 - least) / amount(1));
  }

  /** Litres where its table goes by volume, else kilograms; a litre of water counts one. */
  private double amount(double litres) {
    return liquid.byVolume ? litres : litres * liquid.kgPerL;
  }

  /**
   * Mass of a litre as poured [kg/L]: from the table's specific gravity at 15.6 °C where it is
   * thinned and the table has it, else from the pure liquid's and water's densities without the
   * percent or two by which they shrink in mixing.
   *
   * @param strength pure antifreeze in it, by volume, 0 to 1
   */
  public double kgPerL(double strength) {
    double percent = 100 * strength;
    double waterKgPerL = Water.densityKgPerM3(15.6) / 1000;
    if (gravity.length > 0 && percent <= freezing.percent()[gravity.length - 1]) {
      double fromPercent = 0;
      double fromGravity = 1;
      int row = 0;
      while (percent > freezing.percent()[row]) {
        fromPercent = freezing.percent()[row];
        fromGravity = gravity[row];
        row++;
      }
      double part = (percent - fromPercent) / (freezing.percent()[row] - fromPercent);
      return waterKgPerL * (fromGravity + part * (gravity[row] - fromGravity));
    }
    return strength * liquid.kgPerL + (1 - strength) * waterKgPerL;
  }
}
