package org.rimebook.totals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/**
 * How far the wires' own changes of depth over each hour lie apart. Wires of one bucket that rise
 * by different amounts can't all be right, and nobody has said which is wrong.
 */
final class WireAgreement {

  /**
   * Changes this close agree [mm]; own choice, three times the 0.3 mm in five minutes of Baker et
   * al. 2005 (NOAA Technical Note NCDC USCRN-05-1).
   */
  private static final double TOLERANCE_MM = 1;

  /** Changes this many times further apart than is usual in the season disagree; own choice. */
  private static final double UNUSUAL = 8;

  /** Last part of an hour whose readings are averaged [ms]; own choice. */
  private static final long CLOSING_MS = 900_000;

  private final Evidence evidence;
  private final Interval span;
  private final double[][] closingMm;
  private final double[] spreadMm;
  private final double limitMm;

  private WireAgreement(Evidence evidence, Interval span, double[][] closingMm) {
    int hours = (int) (span.lengthMs() / Clock.HOUR_MS);
    this.evidence = evidence;
    this.span = span;
    this.closingMm = closingMm;
    this.spreadMm = new double[hours];
    for (int h = 1; h < hours; h++) {
      spreadMm[h] = spread(h);
    }
    double[] positive = Arrays.stream(spreadMm).filter(s -> s > 0).toArray();
    double usual = positive.length == 0 ? 0 : Robust.medianInPlace(positive, positive.length);
    this.limitMm = Math.max(TOLERANCE_MM, UNUSUAL * usual);
  }

  static WireAgreement of(Evidence evidence, Interval span) {
    double[][] closingMm =
        IntStream.range(0, evidence.sheet().wires().size())
            .parallel()
            .mapToObj(wire -> closings(evidence, wire, span))
            .toArray(double[][]::new);
    return new WireAgreement(evidence, span, closingMm);
  }

  /**
   * The same hours where readings are used otherwise in some of them.
   *
   * @param now the record, sheet and span are the same
   * @param touched where readings are used otherwise
   */
  WireAgreement revised(Evidence now, Interval touched) {
    int hours = spreadMm.length;
    long first = Math.floorDiv(touched.fromMs() - 1 - span.fromMs(), Clock.HOUR_MS);
    int from = (int) Math.max(0, Math.min(hours - 1, first));
    long last = Math.floorDiv(touched.toMs() - span.fromMs(), Clock.HOUR_MS);
    int to = (int) Math.max(0, Math.min(hours - 1, last)) + 1;
    Interval anew =
        new Interval(span.fromMs() + from * Clock.HOUR_MS, span.fromMs() + to * Clock.HOUR_MS);
    double[][] closings = new double[closingMm.length][];
    for (int wire = 0; wire < closings.length; wire++) {
      closings[wire] = closingMm[wire].clone();
      System.arraycopy(closings(now, wire, anew), 0, closings[wire], from, to - from);
    }
    return new WireAgreement(now, span, closings);
  }

  /** Whether the wires disagree over an hour. */
  boolean broken(int hour) {
    return spreadMm[hour] > limitMm;
  }

  /** How far the wires' changes over an hour lie apart [mm]. */
  double spreadMm(int hour) {
    return spreadMm[hour];
  }

  /** Mean depth over the last quarter of each hour of a span; NaN where the wire has none. */
  private static double[] closings(Evidence evidence, int wire, Interval hours) {
    double[] closing = new double[(int) (hours.lengthMs() / Clock.HOUR_MS)];
    int[] count = new int[closing.length];
    SeasonRecord record = evidence.record();
    int end = record.firstRowAtOrAfter(hours.toMs() + 1);
    for (int row = record.firstRowAtOrAfter(hours.fromMs() + 1); row < end; row++) {
      long beforeMs = record.stampMs(row) - 1 - hours.fromMs();
      int hour = (int) (beforeMs / Clock.HOUR_MS);
      boolean closes = beforeMs % Clock.HOUR_MS >= Clock.HOUR_MS - CLOSING_MS;
      if (closes && evidence.depths().used(wire, row)) {
        count[hour]++;
        closing[hour] += (evidence.depths().depthMm(wire, row) - closing[hour]) / count[hour];
      }
    }
    for (int h = 0; h < closing.length; h++) {
      closing[h] = count[h] == 0 ? Double.NaN : closing[h];
    }
    return closing;
  }

  private double spread(int hour) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int wire = 0; wire < closingMm.length; wire++) {
      double change = closingMm[wire][hour] - closingMm[wire][hour - 1];
      if (!Double.isNaN(change) && oneCalibration(wire, hour)) {
        least = Math.min(least, change);
        greatest = Math.max(greatest, change);
      }
    }
    return Math.max(0, greatest - least);
  }

  private boolean oneCalibration(int wire, int hour) {
    Wire sheet = evidence.sheet().wires().get(wire);
    long end = span.fromMs() + (hour + 1) * Clock.HOUR_MS;
    return sheet.calibrationAt(end).equals(sheet.calibrationAt(end - 2 * Clock.HOUR_MS));
  }
}
