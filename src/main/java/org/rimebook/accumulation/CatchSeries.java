package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the bucket caught, as pieces that follow each other without holes from the first to the last
 * reading of the record. Immutable.
 */
public final class CatchSeries {

  /** What is known of a piece. */
  public enum Kind {
    /** Readings show no catch. */
    DRY_STEP,
    /** Readings show catch between them. */
    WET_STEP,
    /** No readings; the level rose across them. The catch is known, its timing isn't. */
    GAP_CATCH,
    /** No readings; the level didn't rise beyond its uncertainty: nothing fell. */
    GAP_STILL,
    /** The analyst: timing unknown. The catch is known. */
    LATE_CATCH,
    /** Service visit: no change of level is catch. */
    VISIT,
    /** The analyst: nothing fell. */
    DRY_SPELL,
    /** The analyst's own total; timing unknown. */
    ESTIMATE,
    /** No level to compare: the catch isn't known. */
    UNKNOWN;

    /** Whether the piece has a total but no timing inside. */
    public boolean timingUnknown() {
      return this == GAP_CATCH || this == LATE_CATCH || this == ESTIMATE;
    }

    boolean byLevel() {
      return this == WET_STEP || this == GAP_CATCH || this == GAP_STILL || this == LATE_CATCH;
    }
  }

  static final double HOUR_MS = 3_600_000;

  private final long[] edgeMs;
  private final Kind[] kind;
  private final double[] catchMm;
  final double[] startMm2;
  final double[] endMm2;
  final double[] gain;
  final double[] doubtMmPerH;
  final double dryDriftMm2PerH;
  final double commonShare;

  /** By length [ms]; a season with months unknown asks for the same few lengths every hour. */
  private final Map<Long, Double> meanSquareMm2 = new ConcurrentHashMap<>();

  private CatchSeries(Builder b, double dryDriftMm2PerH, double commonShare) {
    this.commonShare = commonShare;
    this.edgeMs = Arrays.copyOf(b.edgeMs, b.size + 1);
    this.kind = Arrays.copyOf(b.kind, b.size);
    this.catchMm = Arrays.copyOf(b.catchMm, b.size);
    this.startMm2 = Arrays.copyOf(b.startMm2, b.size);
    this.endMm2 = Arrays.copyOf(b.endMm2, b.size);
    this.gain = Arrays.copyOf(b.gain, b.size);
    this.doubtMmPerH = Arrays.copyOf(b.doubtMmPerH, b.size);
    this.dryDriftMm2PerH = dryDriftMm2PerH;
  }

  /** Pieces of a series, those of another in its middle, and its own again. */
  private CatchSeries(CatchSeries own, CatchSeries middle, int from, int to) {
    int size = from + middle.size() + own.size() - to;
    this.edgeMs = new long[size + 1];
    this.kind = new Kind[size];
    this.catchMm = new double[size];
    this.startMm2 = new double[size];
    this.endMm2 = new double[size];
    this.gain = new double[size];
    this.doubtMmPerH = new double[size];
    this.dryDriftMm2PerH = own.dryDriftMm2PerH;
    this.commonShare = own.commonShare;
    copy(own, 0, from, 0);
    copy(middle, 0, middle.size(), from);
    copy(own, to, own.size(), from + middle.size());
  }

  private void copy(CatchSeries source, int from, int to, int at) {
    System.arraycopy(source.edgeMs, from, edgeMs, at, to - from + 1);
    System.arraycopy(source.kind, from, kind, at, to - from);
    System.arraycopy(source.catchMm, from, catchMm, at, to - from);
    System.arraycopy(source.startMm2, from, startMm2, at, to - from);
    System.arraycopy(source.endMm2, from, endMm2, at, to - from);
    System.arraycopy(source.gain, from, gain, at, to - from);
    System.arraycopy(source.doubtMmPerH, from, doubtMmPerH, at, to - from);
  }

  /** This series with another in place of its pieces there; that one starts and ends at edges. */
  CatchSeries with(CatchSeries other) {
    int from = other.fromMs(0) <= edgeMs[0] ? 0 : edge(other.fromMs(0));
    long endMs = other.toMs(other.size() - 1);
    int to = endMs >= edgeMs[size()] ? size() : edge(endMs);
    return new CatchSeries(this, other, from, to);
  }

  private int edge(long epochMs) {
    int found = Arrays.binarySearch(edgeMs, epochMs);
    if (found < 0) {
      throw new IllegalArgumentException("no piece starts at " + epochMs);
    }
    return found;
  }

  /** Pieces. */
  public int size() {
    return kind.length;
  }

  /** Start of a piece [ms since epoch]. */
  public long fromMs(int piece) {
    return edgeMs[piece];
  }

  /** End of a piece, the start of the next [ms since epoch]. */
  public long toMs(int piece) {
    return edgeMs[piece + 1];
  }

  /** What is known of a piece. */
  public Kind kind(int piece) {
    return kind[piece];
  }

  /** Catch of a piece [mm], never negative; 0 where it isn't known. */
  public double catchMm(int piece) {
    return catchMm[piece];
  }

  /** Index of the piece that contains an instant; the first or last one for instants outside. */
  public int pieceAt(long epochMs) {
    int found = Arrays.binarySearch(edgeMs, epochMs);
    int piece = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(size() - 1, piece));
  }

  /**
   * Variance of the catch between two instants [mm²]: of the levels at the ends of each wet
   * stretch, less what their errors share, and of the wandering of the level meanwhile. Where
   * nothing fell it is that of the wandering, which could hide or feign catch. What all catch of
   * the season may be off by together, as a share, is added to it.
   */
  public double varianceMm2(long fromMs, long toMs) {
    return variance(fromMs, toMs).totalMm2();
  }

  /** What {@link #varianceMm2} is made of. */
  public CatchVariance variance(long fromMs, long toMs) {
    CatchSum sum = new CatchSum(this, fromMs);
    for (int piece = pieceAt(fromMs); piece < size() && fromMs(piece) < toMs; piece++) {
      sum.add(piece, toMs);
    }
    return sum.variance();
  }

  /**
   * The {@link #varianceMm2} from one instant to each of many, to the last bit, in a single sweep
   * over the pieces.
   *
   * @param fromMs the instant [ms since epoch]
   * @param toMs the others, ascending [ms since epoch]
   * @return variances [mm²], one an instant
   */
  public double[] variancesMm2(long fromMs, long[] toMs) {
    double[] variances = new double[toMs.length];
    CatchSum before = new CatchSum(this, fromMs);
    int piece = pieceAt(fromMs);
    for (int i = 0; i < toMs.length; i++) {
      if (i > 0 && toMs[i] < toMs[i - 1]) {
        throw new IllegalArgumentException(toMs[i] + " is before " + toMs[i - 1]);
      }
      for (; piece + 1 < size() && fromMs(piece + 1) < toMs[i]; piece++) {
        before.add(piece, toMs(piece));
      }
      CatchSum upTo = new CatchSum(before);
      if (fromMs(piece) < toMs[i]) {
        upTo.add(piece, toMs[i]);
      }
      variances[i] = upTo.variance().totalMm2();
    }
    return variances;
  }

  /** Variance of a piece that isn't known by levels, between two instants [mm²]. */
  double otherVariance(int piece, long fromMs, long toMs) {
    if (kind[piece] == Kind.ESTIMATE) {
      return estimateVariance(piece, fromMs, toMs);
    }
    return kind[piece] == Kind.UNKNOWN
        ? meanSquareMm2.computeIfAbsent(overlapMs(piece, fromMs, toMs), this::meanSquareMm2)
        : 0;
  }

  /**
   * How much may be lacking where the catch isn't known: the mean square of what the season caught
   * in all known stretches of that length, laid end to end.
   */
  private double meanSquareMm2(long lengthMs) {
    double square = 0;
    int stretches = 0;
    double caughtMm = 0;
    long stretchMs = 0;
    for (int piece = 0; piece < size(); piece++) {
      if (kind[piece] == Kind.UNKNOWN) {
        continue;
      }
      caughtMm += catchMm[piece];
      stretchMs += toMs(piece) - fromMs(piece);
      if (stretchMs >= lengthMs) {
        double share = lengthMs / (double) stretchMs;
        square += caughtMm * caughtMm * share * share;
        stretches++;
        caughtMm = 0;
        stretchMs = 0;
      }
    }
    return stretches == 0 ? caughtMm * caughtMm : square / stretches;
  }

  /**
   * Nothing is known of the error of an analyst's total but that the truth lies between nothing and
   * twice as much: a rectangular distribution (JCGM 100:2008, 4.3.7).
   */
  private double estimateVariance(int piece, long fromMs, long toMs) {
    double share = share(piece, fromMs, toMs);
    return catchMm[piece] * catchMm[piece] / 3 * share * share;
  }

  /** How much of a piece lies between two instants. */
  double share(int piece, long fromMs, long toMs) {
    return overlapMs(piece, fromMs, toMs) / (double) (toMs(piece) - fromMs(piece));
  }

  long overlapMs(int piece, long fromMs, long toMs) {
    return Math.max(0, Math.min(toMs, toMs(piece)) - Math.max(fromMs, fromMs(piece)));
  }

  /** Collects pieces in order. */
  static final class Builder {
    private long[] edgeMs = new long[1024];
    private Kind[] kind = new Kind[1023];
    private double[] catchMm = new double[1023];
    private double[] startMm2 = new double[1023];
    private double[] endMm2 = new double[1023];
    private double[] gain = new double[1023];
    private double[] doubtMmPerH = new double[1023];
    private int size;

    Builder(long startMs) {
      edgeMs[0] = startMs;
    }

    long endMs() {
      return edgeMs[size];
    }

    /** Adds a piece up to an instant; one without length is left out. */
    void add(Kind pieceKind, long toMs, double pieceMm) {
      add(pieceKind, toMs, pieceMm, new Ends(0, 0, 0, 0));
    }

    void add(Kind pieceKind, long toMs, double pieceMm, Ends ends) {
      Objects.requireNonNull(pieceKind, "pieceKind");
      if (toMs <= edgeMs[size]) {
        return;
      }
      if (size == kind.length) {
        grow();
      }
      kind[size] = pieceKind;
      catchMm[size] = pieceMm;
      startMm2[size] = ends.startMm2();
      endMm2[size] = ends.endMm2();
      gain[size] = ends.gain();
      doubtMmPerH[size] = ends.doubtMm() * HOUR_MS / (toMs - edgeMs[size]);
      size++;
      edgeMs[size] = toMs;
    }

    private void grow() {
      int capacity = 2 * kind.length;
      edgeMs = Arrays.copyOf(edgeMs, capacity + 1);
      kind = Arrays.copyOf(kind, capacity);
      catchMm = Arrays.copyOf(catchMm, capacity);
      startMm2 = Arrays.copyOf(startMm2, capacity);
      endMm2 = Arrays.copyOf(endMm2, capacity);
      gain = Arrays.copyOf(gain, capacity);
      doubtMmPerH = Arrays.copyOf(doubtMmPerH, capacity);
    }

    /**
     * @param dryDriftMm2PerH variance by which a dry level wanders [mm²/h]
     * @param commonShare standard uncertainty that all catch by the level has in common, as a share
     */
    CatchSeries build(double dryDriftMm2PerH, double commonShare) {
      return new CatchSeries(this, dryDriftMm2PerH, commonShare);
    }
  }

  /**
   * How well the levels at the ends of a piece are known.
   *
   * @param startMm2 variance at its start [mm²]
   * @param endMm2 variance at its end [mm²]
   * @param gain share of the end's error that the start shares
   * @param doubtMm standard uncertainty of what evaporated meanwhile, of one sign for all pieces
   *     [mm]
   */
  record Ends(double startMm2, double endMm2, double gain, double doubtMm) {

    /** Both levels known less well; how far their errors are the same stays. */
    Ends widened(double byMm2) {
      double start = startMm2 + byMm2;
      double end = endMm2 + byMm2;
      double kept = startMm2 > 0 ? Math.sqrt(endMm2 / startMm2 * start / end) : 0;
      return byMm2 > 0 ? new Ends(start, end, kept * gain, doubtMm) : this;
    }
  }
}
