package org.rimebook.depth;

import java.util.Arrays;
import java.util.Optional;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;

/**
 * Combines the wires anew about some rows of a season and joins the result to the level as it was.
 * What is usual of each wire is held as it was learnt. Within a segment the level before the rows
 * stays as it is and that after them is lifted to follow on.
 *
 * <p>Where a wire is away for longer than the look around, it is as if it weren't there: its share
 * of a tilt is missing from the rows combined anew. Limits are our own choice.
 */
public final class LevelRevision {

  /** Combined anew on either side [ms]: what happens beyond doesn't change any offset inside. */
  private static final long AROUND_MS = 6 * 3_600_000L;

  /** The same in rows, for what the level is tied by where readings are far apart. */
  private static final int AROUND_ROWS = 64;

  /** Looked this far for a row with all wires, so that no hole is cut in two [ms]. */
  private static final long LOOKED_MS = 72 * 3_600_000L;

  /** Taken anew on either side, offsets being read from as far as this beside a hole [ms]. */
  private static final long TAKEN_MS = 3_600_000L;

  private final ConvertedWires converted;
  private final WireDepths depths;
  private final SeasonRecord record;
  private final LevelSeries before;
  private final RowRange taken;
  private final LevelSeries.Levels fresh;

  private LevelRevision(
      ConvertedWires converted,
      WireDepths depths,
      Notebook notebook,
      LevelSeries before,
      RowRange rows) {
    this.converted = converted;
    this.depths = depths;
    this.record = converted.record();
    this.before = before;
    this.taken =
        new RowRange(completeBefore(rows.fromRow(), TAKEN_MS), completeAfter(rows, TAKEN_MS));
    int first = completeBefore(rows.fromRow(), AROUND_MS);
    int end = completeAfter(rows, AROUND_MS);
    RowRange around =
        new RowRange(
            Math.max(0, Math.min(first, taken.fromRow() - AROUND_ROWS)),
            Math.min(record.size(), Math.max(end, taken.toRow() + AROUND_ROWS)));
    UsableRows usable = UsableRows.of(converted, depths, notebook, around);
    double[][] depthMm = WireCombiner.usedDepthsMm(usable, depths);
    this.fresh = WireCombiner.levels(usable, depthMm, before.habits());
  }

  /**
   * A level combined anew about some rows.
   *
   * @param level the level of the season
   * @param rows the rows it is new at; elsewhere it is as it was but for a constant
   */
  public record Revised(LevelSeries level, RowRange rows) {}

  /**
   * Combines the wires anew about some rows.
   *
   * @param converted the wires' depths
   * @param depths what of them is used
   * @param notebook its service visits in force cut the level
   * @param before the level of the season, combined throughout
   * @param rows the rows in which readings are used otherwise or visits have changed
   */
  public static Revised of(
      ConvertedWires converted,
      WireDepths depths,
      Notebook notebook,
      LevelSeries before,
      RowRange rows) {
    LevelRevision revision = new LevelRevision(converted, depths, notebook, before, rows);
    return new Revised(revision.joined(), revision.taken);
  }

  /** The last row so long before another at which all wires are used; else the one so long ago. */
  private int completeBefore(int row, long ms) {
    if (row <= 0) {
      return 0;
    }
    int all = (1 << depths.wires()) - 1;
    long atMs = record.stampMs(row);
    int from = record.firstRowAtOrAfter(atMs - ms);
    int at = from;
    while (at > 0 && depths.usedMask(at) != all && atMs - record.stampMs(at) < LOOKED_MS) {
      at--;
    }
    return depths.usedMask(at) == all || at == 0 ? at : from;
  }

  private int completeAfter(RowRange rows, long ms) {
    int all = (1 << depths.wires()) - 1;
    long atMs = record.stampMs(Math.max(rows.fromRow(), rows.toRow() - 1));
    int to = record.firstRowAtOrAfter(atMs + ms);
    int at = to;
    while (at < record.size()
        && depths.usedMask(at) != all
        && record.stampMs(at) - atMs < LOOKED_MS) {
      at++;
    }
    return at >= record.size() || depths.usedMask(at) == all ? Math.min(at, record.size()) : to;
  }

  private LevelSeries joined() {
    int from = before.indexAtOrAfter(taken.fromRow());
    int oldTo = before.indexAtOrAfter(taken.toRow());
    Optional<Tie> left = tieBefore(from);
    Optional<Tie> right = tieAfter(oldTo);
    int freshFrom = freshIndex(taken.fromRow());
    int freshTo = freshIndex(taken.toRow());
    boolean through =
        left.isPresent()
            && right.isPresent()
            && fresh.segment()[left.get().fresh] == fresh.segment()[right.get().fresh];
    double liftMm = through ? liftMm(left.get()) - liftMm(right.get()) : 0;
    int firstSegment = left.map(t -> before.segment(t.old) - fresh.segment()[t.fresh]).orElse(0);
    int segments =
        right.map(t -> fresh.segment()[t.fresh] + firstSegment - before.segment(t.old)).orElse(0);
    int size = freshTo - freshFrom;
    LevelSeries.Levels middle =
        new LevelSeries.Levels(new int[size], new double[size], new int[size], new int[size]);
    for (int i = 0; i < size; i++) {
      int at = freshFrom + i;
      int segment = fresh.segment()[at];
      middle.row()[i] = fresh.row()[at];
      middle.wireMask()[i] = fresh.wireMask()[at];
      middle.segment()[i] = segment + firstSegment;
      middle.levelMm()[i] = fresh.levelMm()[at] + liftMm(segment, left, right);
    }
    int to = from + size;
    int skip = oldTo - to;
    return before.with(
        middle, new LevelSeries.Join(from, to, skip, segmentEnd(oldTo) - skip, liftMm, segments));
  }

  /** The same row in the level as it was and in the one combined anew. */
  private record Tie(int old, int fresh) {}

  private double liftMm(Tie tie) {
    return before.levelMm(tie.old) - fresh.levelMm()[tie.fresh];
  }

  private double liftMm(int segment, Optional<Tie> left, Optional<Tie> right) {
    if (left.isPresent() && segment == fresh.segment()[left.get().fresh]) {
      return liftMm(left.get());
    }
    return right.isPresent() && segment == fresh.segment()[right.get().fresh]
        ? liftMm(right.get())
        : 0;
  }

  private Optional<Tie> tieBefore(int from) {
    for (int old = from - 1; old >= 0; old--) {
      int at = freshIndex(before.row(old));
      if (at == 0 && fresh.row().length > 0 && fresh.row()[0] > before.row(old)) {
        return Optional.empty();
      }
      if (at < fresh.row().length && fresh.row()[at] == before.row(old)) {
        return Optional.of(new Tie(old, at));
      }
    }
    return Optional.empty();
  }

  private Optional<Tie> tieAfter(int from) {
    for (int old = from; old < before.size(); old++) {
      int at = freshIndex(before.row(old));
      if (at == fresh.row().length) {
        return Optional.empty();
      }
      if (fresh.row()[at] == before.row(old)) {
        return Optional.of(new Tie(old, at));
      }
    }
    return Optional.empty();
  }

  private int freshIndex(int row) {
    int found = Arrays.binarySearch(fresh.row(), row);
    return found >= 0 ? found : -found - 1;
  }

  private int segmentEnd(int from) {
    int low = from;
    int high = before.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (before.segment(middle) == before.segment(from)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
