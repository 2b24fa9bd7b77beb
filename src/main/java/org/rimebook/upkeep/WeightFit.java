package org.rimebook.upkeep;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.rimebook.depth.CalibrationFit;
import org.rimebook.depth.CalibrationUncertainty;
import org.rimebook.station.Calibration;

/**
 * A wire's calibration fitted to check weights.
 *
 * @param fit the curve P = a(f−f0) + b(f−f0)² with its uncertainties
 * @param uF0Hz standard uncertainty of f0, from repeated readings of the empty bucket [Hz]; 0 for a
 *     single one or when f0 was given
 * @param residuals what each weight misses the curve by
 */
public record WeightFit(CalibrationFit fit, double uF0Hz, List<Residual> residuals) {

  private static final double MM_PER_CM = 10;

  public WeightFit {
    residuals = List.copyOf(residuals);
  }

  /**
   * A check weight against a curve.
   *
   * @param depthMm depth of water it stands for [mm]
   * @param frequencyHz frequency read [Hz]
   * @param residualMm that depth less the curve's at the frequency [mm]
   */
  public record Residual(double depthMm, double frequencyHz, double residualMm) {}

  /**
   * Fits the weights, f0 being the mean of the readings without a weight.
   *
   * @param loads check weights
   * @param orificeAreaCm2 area of the orifice [cm²]
   * @throws IllegalArgumentException in words when they don't determine the curve
   */
  public static WeightFit of(List<LoadReading> loads, double orificeAreaCm2) {
    double[] empty =
        loads.stream().filter(l -> l.massKg() == 0).mapToDouble(LoadReading::frequencyHz).toArray();
    if (empty.length == 0) {
      throw new IllegalArgumentException(
          "no reading of the empty bucket: add one with mass 0, or give f0");
    }
    double mean = Arrays.stream(empty).average().orElseThrow();
    double squares = Arrays.stream(empty).map(f -> (f - mean) * (f - mean)).sum();
    double uHz = empty.length < 2 ? 0 : Math.sqrt(squares / (empty.length - 1) / empty.length);
    return of(loads, orificeAreaCm2, mean, uHz);
  }

  /**
   * Fits the weights with a given f0.
   *
   * @param loads check weights
   * @param orificeAreaCm2 area of the orifice [cm²]
   * @param f0Hz frequency under the empty bucket [Hz]
   * @param uF0Hz its standard uncertainty [Hz]
   * @throws IllegalArgumentException in words when they don't determine the curve
   */
  public static WeightFit of(
      List<LoadReading> loads, double orificeAreaCm2, double f0Hz, double uF0Hz) {
    List<LoadReading> weighed = loads.stream().filter(l -> l.massKg() > 0).toList();
    double[] hz = weighed.stream().mapToDouble(LoadReading::frequencyHz).toArray();
    double[] mm =
        weighed.stream().mapToDouble(l -> Water.depthMm(l.massKg(), orificeAreaCm2)).toArray();
    CalibrationFit fit = CalibrationFit.of(hz, mm, f0Hz);
    return new WeightFit(fit, uF0Hz, residuals(loads, orificeAreaCm2, fit));
  }

  private static List<Residual> residuals(
      List<LoadReading> loads, double orificeAreaCm2, CalibrationFit fit) {
    return loads.stream()
        .map(
            load -> {
              double mm = Water.depthMm(load.massKg(), orificeAreaCm2);
              double hz = load.frequencyHz();
              return new Residual(mm, hz, mm - fit.curve().depthMm(hz));
            })
        .toList();
  }

  /** Uncertainty of depths on the fitted curve. */
  public CalibrationUncertainty uncertainty() {
    return fit.uncertainty(uF0Hz);
  }

  /** A [cm/Hz], as the station sheet has it. */
  public double aCmPerHz() {
    return fit.curve().aMmPerHz() / MM_PER_CM;
  }

  /** B [cm/Hz²], as the station sheet has it. */
  public double bCmPerHz2() {
    return fit.curve().bMmPerHz2() / MM_PER_CM;
  }

  /**
   * The calibration, as the station sheet has it.
   *
   * @param from since when it holds
   */
  public Calibration calibration(Optional<Instant> from) {
    return new Calibration(from, aCmPerHz(), bCmPerHz2(), fit.curve().f0Hz());
  }
}
