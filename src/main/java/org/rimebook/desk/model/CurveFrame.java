package org.rimebook.desk.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.rimebook.depth.CalibrationCurve;

/**
 * The part of the plane that shows all curves from the empty bucket to the full one, with the first
 * readings.
 *
 * @param hz frequencies [Hz]
 * @param mm depths [mm]
 */
public record CurveFrame(Axis hz, Axis mm) {

  /** Stands in for a capacity that isn't entered; common buckets hold about as much. */
  private static final double USUAL_CAPACITY_MM = 600;

  private static final double MARGIN = 0.04;

  /**
   * A stretch of an axis.
   *
   * @param least its least value
   * @param greatest its greatest value, above the least
   */
  public record Axis(double least, double greatest) {

    private static final int MOST_TICKS = 6;

    /** Where a value lies, 0 at the least and 1 at the greatest. */
    public double share(double value) {
      return (value - least) / (greatest - least);
    }

    /** Round values for a grid, at most {@value #MOST_TICKS}. */
    public double[] ticks() {
      double rough = (greatest - least) / MOST_TICKS;
      double ten = StrictMath.pow(10, Math.floor(StrictMath.log10(rough)));
      double step =
          DoubleStream.of(1, 2, 5, 10)
              .map(f -> f * ten)
              .filter(s -> s >= rough)
              .findFirst()
              .orElse(10 * ten);
      // Adding zero makes a negative zero a plain one.
      double first = Math.ceil(least / step) * step + 0.0;
      return DoubleStream.iterate(first, tick -> tick <= greatest, tick -> tick + step).toArray();
    }
  }

  /** The frame of a draft; empty without a curve that can be drawn. */
  public static Optional<CurveFrame> of(SeasonDraft draft, FirstReadings readings) {
    double fullMm = draft.number(StationField.CAPACITY).orElse(USUAL_CAPACITY_MM);
    List<FirstReadings.OfWire> drawn =
        readings.wires().stream().filter(wire -> wire.curve().isPresent()).toList();
    double[] hz =
        drawn.stream()
            .flatMapToDouble(wire -> frequencies(wire, wire.curve().orElseThrow(), fullMm))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    double[] mm =
        drawn.stream()
            .flatMapToDouble(wire -> depths(wire, wire.curve().orElseThrow()))
            .sorted()
            .toArray();
    if (hz.length == 0 || hz[0] == hz[hz.length - 1]) {
      return Optional.empty();
    }
    double deepest = mm.length == 0 ? fullMm : Math.max(fullMm, mm[mm.length - 1]);
    double shallowest = mm.length == 0 ? 0 : Math.min(0, mm[0]);
    return Optional.of(
        new CurveFrame(widened(hz[0], hz[hz.length - 1]), widened(shallowest, deepest)));
  }

  /** Frequency [Hz] at which a curve leaves the frame, or where it turns back before that. */
  public double endHz(CalibrationCurve curve) {
    return endHz(curve, mm.greatest());
  }

  private static double endHz(CalibrationCurve curve, double depthMm) {
    if (curve.reaches(depthMm)) {
      return curve.frequencyHz(depthMm);
    }
    double turn = curve.f0Hz() - curve.aMmPerHz() / (2 * curve.bMmPerHz2());
    return Double.isFinite(turn) && turn > curve.f0Hz() ? turn : curve.f0Hz();
  }

  private static Axis widened(double least, double greatest) {
    double margin = MARGIN * (greatest - least);
    return new Axis(least - margin, greatest + margin);
  }

  private static DoubleStream frequencies(
      FirstReadings.OfWire wire, CalibrationCurve curve, double fullMm) {
    return DoubleStream.concat(DoubleStream.of(curve.f0Hz(), endHz(curve, fullMm)), read(wire));
  }

  private static DoubleStream depths(FirstReadings.OfWire wire, CalibrationCurve curve) {
    return read(wire).map(curve::depthMm);
  }

  private static DoubleStream read(FirstReadings.OfWire wire) {
    return wire.frequenciesHz().stream()
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble);
  }
}
