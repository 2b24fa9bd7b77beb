package org.rimebook.upkeep;

import java.util.OptionalDouble;
import org.rimebook.notebook.Entry;

/**
 * What was poured into the bucket at once.
 *
 * @param antifreeze which antifreeze
 * @param strength pure antifreeze in what was poured, by volume before mixing, above 0 to 1
 * @param antifreezeL litres poured, water in it included [L]
 * @param oilL oil [L]
 * @param oilKgPerL density of the oil [kg/L], from its data sheet
 */
public record Poured(
    Antifreeze antifreeze, double strength, double antifreezeL, double oilL, double oilKgPerL) {

  /** A light mineral oil; from memory, the data sheet tells. */
  public static final double USUAL_OIL_KG_PER_L = 0.83;

  public Poured {
    if (!(strength > 0 && strength <= 1)) {
      throw new IllegalArgumentException("a strength is above 0 to 100 %, not " + 100 * strength);
    }
    if (!(antifreezeL >= 0 && oilL >= 0 && oilKgPerL > 0)) {
      throw new IllegalArgumentException("litres and densities aren't negative");
    }
  }

  /** The litres of a visit, of the same antifreeze and oil as this. */
  Poured at(Entry.ServiceVisit visit) {
    return new Poured(antifreeze, strength, or0(visit.antifreezeL()), or0(visit.oilL()), oilKgPerL);
  }

  private static double or0(OptionalDouble litres) {
    return Math.max(0, litres.orElse(0));
  }

  /** Mass [kg]. */
  public double massKg() {
    return antifreezeL * antifreeze.kgPerL(strength) + oilL * oilKgPerL;
  }

  /** Pure antifreeze in it [L]. */
  public double pureL() {
    return strength * antifreezeL;
  }

  /** Water in it [L]. */
  public double waterL() {
    return (1 - strength) * antifreezeL;
  }

  /**
   * How far the depth rises by it [mm].
   *
   * @param orificeAreaCm2 area of the orifice [cm²]
   */
  public double riseMm(double orificeAreaCm2) {
    return Water.depthMm(massKg(), orificeAreaCm2);
  }
}
