package org.rimebook.upkeep;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.depth.CalibrationCurve;

/**
 * Check weights put on one wire, and what they are enough for: one or two check the wire, three or
 * more give a calibration.
 *
 * @param readings each weight with its frequency; mass 0 is the empty bucket
 * @param f0Hz frequency under the empty bucket, where it is given [Hz]
 * @param orificeAreaCm2 area of the orifice [cm²]
 */
public record Weighing(List<LoadReading> readings, OptionalDouble f0Hz, double orificeAreaCm2) {

  private static final int MOST_TO_CHECK = 2;

  /**
   * @throws IllegalArgumentException in words without any weight
   */
  public Weighing {
    readings = List.copyOf(readings);
    if (readings.stream().noneMatch(reading -> reading.massKg() > 0)) {
      throw new IllegalArgumentException("give at least one weight with its frequency");
    }
  }

  private List<LoadReading> weighed() {
    return readings.stream().filter(reading -> reading.massKg() > 0).toList();
  }

  /**
   * The fit; empty with one or two weights.
   *
   * @throws IllegalArgumentException in words when the weights don't determine the curve
   */
  public Optional<WeightFit> fit() {
    if (weighed().size() <= MOST_TO_CHECK) {
      return Optional.empty();
    }
    return Optional.of(
        f0Hz.isPresent()
            ? WeightFit.of(readings, orificeAreaCm2, f0Hz.getAsDouble(), 0)
            : WeightFit.of(readings, orificeAreaCm2));
  }

  /**
   * Each weight checked by the sheet. Where the empty bucket wasn't read, f0 as given stands for
   * it, else that of the sheet.
   *
   * @param sheet the curve of the sheet
   */
  public List<FieldCheck> checks(CalibrationCurve sheet) {
    LoadReading empty =
        readings.stream()
            .filter(reading -> reading.massKg() == 0)
            .findFirst()
            .orElseGet(() -> new LoadReading(0, f0Hz.orElse(sheet.f0Hz())));
    return weighed().stream()
        .map(with -> FieldCheck.of(sheet, empty, with, orificeAreaCm2))
        .toList();
  }
}
