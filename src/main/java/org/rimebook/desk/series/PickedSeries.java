package org.rimebook.desk.series;

import java.util.Arrays;
import org.rimebook.depth.WireDepths;

/** Some readings of a series. Two that don't follow each other in it aren't joined. */
public final class PickedSeries implements Series {

  private final Series all;
  private final int[] index;

  private PickedSeries(Series all, int[] index) {
    this.all = all;
    this.index = index;
  }

  /** None of them. */
  public static PickedSeries none(Series all) {
    return new PickedSeries(all, new int[0]);
  }

  /** Those of a wire that have a value and aren't used. */
  public static PickedSeries leftOut(RecordSeries all, WireDepths depths, int wire) {
    int[] picked = new int[256];
    int size = 0;
    for (int row = 0; row < all.size(); row++) {
      if (!depths.used(wire, row) && !Double.isNaN(all.value(row))) {
        if (size == picked.length) {
          picked = Arrays.copyOf(picked, 2 * size);
        }
        picked[size++] = row;
      }
    }
    return new PickedSeries(all, Arrays.copyOf(picked, size));
  }

  @Override
  public int size() {
    return index.length;
  }

  @Override
  public long timeMs(int i) {
    return all.timeMs(index[i]);
  }

  @Override
  public double value(int i) {
    return all.value(index[i]);
  }

  @Override
  public boolean joins(int before, int after) {
    return index[after] == index[before] + 1 && all.joins(index[before], index[after]);
  }
}
