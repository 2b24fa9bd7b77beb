package org.rimebook.desk.model.against;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Opened;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Wire;

/** The readings of a season, raw and derived, side by side. Immutable. */
public final class Readings {

  /** An instant further off has no reading; own choice. */
  private static final long NEAR_MS = 3_600_000;

  private final Season season;
  private final WireDepths depths;
  private final Optional<SeasonResult> result;
  private final double[] bucketMm;
  private final double hertzPerUnit;

  private Readings(Season season, WireDepths depths, Optional<SeasonResult> result) {
    this.season = season;
    this.depths = depths;
    this.result = result;
    this.hertzPerUnit = season.sheet().layout().hertzPerUnit();
    this.bucketMm = meansMm(depths);
  }

  /**
   * The readings of an open season, as what was computed has them, or as they were on opening as
   * long as nothing has been.
   */
  public static Readings of(Opened opened, Optional<Computed> computed) {
    if (computed.isEmpty()) {
      return new Readings(opened.season(), opened.depths(), Optional.empty());
    }
    SeasonResult result = computed.get().result();
    Readings readings = new Readings(result.season(), result.depths(), Optional.of(result));
    LevelSeries level = result.level();
    for (int i = 0; i < level.size(); i++) {
      readings.bucketMm[level.row(i)] = level.levelMm(i);
    }
    return readings;
  }

  /** By row the mean of the wires used, or of all that have a depth when none is. */
  private static double[] meansMm(WireDepths depths) {
    double[] means = new double[depths.size()];
    for (int row = 0; row < means.length; row++) {
      double used = 0;
      int usedWires = 0;
      double all = 0;
      int allWires = 0;
      for (int wire = 0; wire < depths.wires(); wire++) {
        double depthMm = depths.depthMm(wire, row);
        if (depths.used(wire, row)) {
          used += depthMm;
          usedWires++;
        }
        if (!Double.isNaN(depthMm)) {
          all += depthMm;
          allWires++;
        }
      }
      means[row] = usedWires > 0 ? used / usedWires : all / allWires;
    }
    return means;
  }

  /** The record. */
  public SeasonRecord record() {
    return season.record();
  }

  /** The season. */
  public Season season() {
    return season;
  }

  /** The wires, in the order of the sheet. */
  public List<Wire> wires() {
    return season.sheet().wires();
  }

  /** Depth by wire and row. */
  public WireDepths depths() {
    return depths;
  }

  /** What was computed; empty when nothing has been yet. */
  public Optional<SeasonResult> result() {
    return result;
  }

  /** A wire's frequency [Hz]; NaN where there is none. */
  public double frequencyHz(int wire, int row) {
    return record().frequency(wire).get(row) * hertzPerUnit;
  }

  /** The bucket's depth [mm]; NaN where no wire has one. */
  public double bucketMm(int row) {
    return bucketMm[row];
  }

  /** The row stamped nearest to an instant; empty when that is more than an hour off. */
  public OptionalInt rowNear(long epochMs) {
    int after = record().firstRowAtOrAfter(epochMs);
    int nearest = after;
    if (after == record().size()
        || after > 0 && epochMs - record().stampMs(after - 1) < record().stampMs(after) - epochMs) {
      nearest = after - 1;
    }
    return Math.abs(record().stampMs(nearest) - epochMs) <= NEAR_MS
        ? OptionalInt.of(nearest)
        : OptionalInt.empty();
  }

  /** A wire's frequency [Hz] along x, the bucket's depth [mm] along y. */
  public Points onCurve(int wire) {
    return new OnCurve(wire);
  }

  /** The bucket's depth [mm] along x, by how much one wire reads more than another [mm] along y. */
  public Points pair(int one, int other) {
    return new Pair(one, other);
  }

  private final class OnCurve implements Points {
    private final int wire;

    OnCurve(int wire) {
      this.wire = wire;
    }

    @Override
    public double x(int row) {
      return frequencyHz(wire, row);
    }

    @Override
    public double y(int row) {
      return bucketMm[row];
    }

    @Override
    public boolean used(int row) {
      return depths.used(wire, row);
    }

    @Override
    public double departureMm(int row) {
      return depths.depthMm(wire, row) - bucketMm[row];
    }
  }

  private final class Pair implements Points {
    private final int one;
    private final int other;

    Pair(int one, int other) {
      this.one = one;
      this.other = other;
    }

    @Override
    public double x(int row) {
      return bucketMm[row];
    }

    @Override
    public double y(int row) {
      return departureMm(row);
    }

    @Override
    public boolean used(int row) {
      return depths.used(one, row) && depths.used(other, row);
    }

    @Override
    public double departureMm(int row) {
      return depths.depthMm(one, row) - depths.depthMm(other, row);
    }
  }
}
