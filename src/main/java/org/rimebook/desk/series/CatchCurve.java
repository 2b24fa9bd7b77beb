package org.rimebook.desk.series;

import java.util.Arrays;
import org.rimebook.accumulation.CatchSeries;

/**
 * Catch added up from the start of the record [mm], at the edges of the pieces it is known by, with
 * its standard uncertainty at some hundred instants. Where the catch isn't known the curve breaks.
 */
public final class CatchCurve implements Series {

  private static final int BAND_POINTS = 120;

  private final CatchSeries pieces;
  private final double[] sumMm;
  private final int[] unknownBefore;
  private final long[] bandMs;
  private final double[] bandMm;

  /**
   * @param pieces the catch, at least one piece
   */
  public CatchCurve(CatchSeries pieces) {
    this.pieces = pieces;
    int size = pieces.size();
    sumMm = new double[size + 1];
    unknownBefore = new int[size + 1];
    for (int piece = 0; piece < size; piece++) {
      sumMm[piece + 1] = sumMm[piece] + pieces.catchMm(piece);
      boolean unknown = pieces.kind(piece) == CatchSeries.Kind.UNKNOWN;
      unknownBefore[piece + 1] = unknownBefore[piece] + (unknown ? 1 : 0);
    }
    long fromMs = pieces.fromMs(0);
    long lengthMs = pieces.toMs(size - 1) - fromMs;
    bandMs = new long[BAND_POINTS + 1];
    bandMm = new double[BAND_POINTS + 1];
    for (int i = 0; i <= BAND_POINTS; i++) {
      bandMs[i] = fromMs + lengthMs * i / BAND_POINTS;
    }
    double[] variances = pieces.variancesMm2(fromMs, bandMs);
    for (int i = 1; i <= BAND_POINTS; i++) {
      bandMm[i] = Math.sqrt(variances[i]);
    }
  }

  @Override
  public int size() {
    return sumMm.length;
  }

  @Override
  public long timeMs(int index) {
    return index < pieces.size() ? pieces.fromMs(index) : pieces.toMs(index - 1);
  }

  @Override
  public double value(int index) {
    return sumMm[index];
  }

  @Override
  public boolean joins(int before, int after) {
    return unknownBefore[before] == unknownBefore[after];
  }

  /** Whether all that fell between a reading and the next has no timing inside. */
  public boolean timingUnknown(int index) {
    return index < pieces.size() && pieces.kind(index).timingUnknown();
  }

  /**
   * Catch up to an instant [mm], spread evenly inside a piece; held before and after the record.
   */
  public double sumMm(long epochMs) {
    int piece = pieces.pieceAt(epochMs);
    long fromMs = pieces.fromMs(piece);
    double share = (epochMs - fromMs) / (double) (pieces.toMs(piece) - fromMs);
    return sumMm[piece] + Math.max(0, Math.min(1, share)) * pieces.catchMm(piece);
  }

  /** Whether the catch is known at an instant. */
  public boolean known(long epochMs) {
    return pieces.kind(pieces.pieceAt(epochMs)) != CatchSeries.Kind.UNKNOWN;
  }

  /**
   * Standard uncertainty (k = 1) of {@link #sumMm} [mm], between the instants it is computed at.
   */
  public double uncertaintyMm(long epochMs) {
    int found = Arrays.binarySearch(bandMs, epochMs);
    int after = Math.max(1, Math.min(BAND_POINTS, found >= 0 ? found : -found - 1));
    long fromMs = bandMs[after - 1];
    double share = (epochMs - fromMs) / (double) Math.max(1, bandMs[after] - fromMs);
    double within = Math.max(0, Math.min(1, share));
    return bandMm[after - 1] + within * (bandMm[after] - bandMm[after - 1]);
  }
}
