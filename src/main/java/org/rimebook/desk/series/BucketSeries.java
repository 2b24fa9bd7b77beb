package org.rimebook.desk.series;

import org.rimebook.depth.LevelSeries;
import org.rimebook.record.SeasonRecord;

/** Level of the bucket [mm]. Levels of two segments don't compare and aren't joined. */
public final class BucketSeries implements Series {

  private final SeasonRecord record;
  private final LevelSeries level;
  private final Reach reach;

  /**
   * @param record the record the level was made from
   * @param level the level
   */
  public BucketSeries(SeasonRecord record, LevelSeries level) {
    this.record = record;
    this.level = level;
    this.reach = new Reach(record);
  }

  @Override
  public int size() {
    return level.size();
  }

  @Override
  public long timeMs(int index) {
    return record.stampMs(level.row(index));
  }

  @Override
  public double value(int index) {
    return level.levelMm(index);
  }

  @Override
  public boolean joins(int before, int after) {
    return level.segment(before) == level.segment(after)
        && timeMs(after) - timeMs(before) <= reach.between(level.row(before), level.row(after));
  }
}
