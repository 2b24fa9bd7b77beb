package org.rimebook.depth;

import java.util.List;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Calibration;
import org.rimebook.station.Wire;

/** Which rows of the record each calibration of a wire covers. */
final class CalibrationSpans {

  private final List<CalibrationCurve> curves;
  private final int[] firstRow;

  private CalibrationSpans(List<CalibrationCurve> curves, int[] firstRow) {
    this.curves = curves;
    this.firstRow = firstRow;
  }

  /** The first calibration also covers what comes before it, as {@link Wire#calibrationAt} does. */
  static CalibrationSpans of(Wire wire, SeasonRecord record) {
    List<Calibration> calibrations = wire.calibrations();
    int[] firstRow = new int[calibrations.size() + 1];
    for (int k = 1; k < calibrations.size(); k++) {
      firstRow[k] =
          calibrations.get(k).from().map(f -> record.firstRowAtOrAfter(f.toEpochMilli())).orElse(0);
    }
    firstRow[calibrations.size()] = record.size();
    return new CalibrationSpans(calibrations.stream().map(CalibrationCurve::of).toList(), firstRow);
  }

  int size() {
    return curves.size();
  }

  CalibrationCurve curve(int span) {
    return curves.get(span);
  }

  int firstRow(int span) {
    return firstRow[span];
  }

  /** First row after the span. */
  int endRow(int span) {
    return firstRow[span + 1];
  }

  /** The span that holds a row. */
  int spanOf(int row) {
    int span = curves.size() - 1;
    while (span > 0 && row < firstRow[span]) {
      span--;
    }
    return span;
  }
}
