package org.rimebook.desk.model.against;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * From a rectangle over points to the stretches of time their readings fill. Readings that follow
 * each other make one stretch; rows without a point don't part them, a gap of several sampling
 * intervals does.
 */
public final class Brush {

  /** The most stretches that are handed on; own choice. */
  public static final int MOST_STRETCHES = 200;

  /** Sampling intervals without a reading that part two stretches; own choice. */
  private static final int PARTING_INTERVALS = 3;

  private final SeasonRecord record;
  private final List<RowSpan> runs = new ArrayList<>();
  private int readings;

  private Brush(SeasonRecord record) {
    this.record = record;
  }

  /**
   * The rectangle of a brush; its ends may be infinite.
   *
   * @param x along x
   * @param y along y
   */
  public record Rectangle(Range x, Range y) {
    boolean holds(Points points, int row) {
      return x.holds(points.x(row)) && y.holds(points.y(row));
    }
  }

  /**
   * What a brush has found.
   *
   * @param stretches the stretches with most readings, {@link #MOST_STRETCHES} at most, in order
   * @param readings readings in the rectangle
   * @param found stretches there were
   */
  public record Found(List<Interval> stretches, int readings, int found) {
    public Found {
      stretches = List.copyOf(stretches);
    }

    /** What to tell of it. */
    public String words() {
      if (readings == 0) {
        return "No readings there: drag over some";
      }
      String all = number(readings, "reading", "") + " in " + number(found, "stretch", "e");
      return found <= stretches.size()
          ? all + " selected"
          : all
              + ": the "
              + stretches.size()
              + " longest are selected. Drag over fewer, or show only what is in view";
    }

    private static String number(int count, String what, String joint) {
      return count + " " + what + (count == 1 ? "" : joint + "s");
    }
  }

  /**
   * Brushes.
   *
   * @param points the plot's points, one layer a wire; a reading counts when any layer has it
   * @param rectangle where
   * @param span rows on the plot
   * @param record the record
   */
  public static Found over(
      List<Points> points, Rectangle rectangle, RowSpan span, SeasonRecord record) {
    Brush brush = new Brush(record);
    boolean open = false;
    int last = -1;
    for (int row = span.from(); row < span.to(); row++) {
      boolean held = false;
      boolean placed = false;
      for (Points layer : points) {
        held |= rectangle.holds(layer, row);
        placed |= !Double.isNaN(layer.x(row)) && !Double.isNaN(layer.y(row));
      }
      if (held) {
        brush.take(row, open && brush.goesOn(last, row));
        last = row;
      }
      open = held || open && !placed;
    }
    return brush.found();
  }

  private void take(int row, boolean goesOn) {
    readings++;
    int last = runs.size() - 1;
    if (goesOn) {
      runs.set(last, new RowSpan(runs.get(last).from(), row + 1));
    } else {
      runs.add(new RowSpan(row, row + 1));
    }
  }

  private boolean goesOn(int last, int row) {
    return record.stampMs(row) - record.stampMs(last) <= PARTING_INTERVALS * intervalMs(row);
  }

  private long intervalMs(int row) {
    long found = 0;
    for (SamplingRun run : record.sampling()) {
      if (run.firstRow() > row) {
        break;
      }
      found = run.intervalMs();
    }
    return found;
  }

  private Found found() {
    List<Interval> stretches =
        runs.stream()
            .sorted(Comparator.comparingInt(run -> run.from() - run.to()))
            .limit(MOST_STRETCHES)
            .map(this::interval)
            .sorted(Comparator.comparingLong(Interval::fromMs))
            .toList();
    return new Found(stretches, readings, runs.size());
  }

  /** To the reading that follows, or one sampling interval on when that is later. */
  private Interval interval(RowSpan run) {
    long lastMs = record.stampMs(run.to() - 1);
    long oneOn = lastMs + intervalMs(run.to() - 1);
    long next = run.to() < record.size() ? record.stampMs(run.to()) : oneOn;
    return new Interval(record.stampMs(run.from()), Math.min(next, oneOn));
  }
}
