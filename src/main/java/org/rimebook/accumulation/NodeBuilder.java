package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.LevelSeries;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;

/** Thins a level series to nodes and tells what lies between them. */
final class NodeBuilder {

  /** Readings closer than this are averaged into one node [ms]. */
  private static final long CELL_MS = 60_000;

  private final SeasonRecord record;
  private final LevelSeries level;
  private final List<Ruling> rulings;

  private long[] timeMs;
  private double[] levelMm;
  private int[] readings;
  private int[] firstIndex;
  private LevelNodes.Link[] links;
  private int size;

  private NodeBuilder(SeasonRecord record, LevelSeries level, List<Ruling> rulings) {
    this.record = record;
    this.level = level;
    this.rulings = rulings;
  }

  static LevelNodes build(SeasonRecord record, LevelSeries level, List<Ruling> rulings) {
    return new NodeBuilder(record, level, rulings).build(0, level.size());
  }

  /** The nodes of the levels from one index to another, outside. */
  static LevelNodes build(LevelEvidence evidence, int fromIndex, int toIndex) {
    return new NodeBuilder(evidence.record(), evidence.level(), evidence.rulings())
        .build(fromIndex, toIndex);
  }

  private LevelNodes build(int fromIndex, int toIndex) {
    int capacity = toIndex - fromIndex;
    timeMs = new long[capacity];
    levelMm = new double[capacity];
    readings = new int[capacity];
    firstIndex = new int[capacity];
    links = new LevelNodes.Link[capacity];
    int lastIndex = -1;
    int nextRuling = 0;
    GapLimit gapLimit = new GapLimit(record);
    for (int i = fromIndex; i < toIndex; i++) {
      long stamp = record.stampMs(level.row(i));
      while (nextRuling < rulings.size() && rulings.get(nextRuling).interval().toMs() <= stamp) {
        nextRuling++;
      }
      if (inside(nextRuling, stamp) && !lastWord(nextRuling, i)) {
        continue;
      }
      if (lastIndex < 0) {
        start(stamp, i);
      } else {
        LevelNodes.Link link = link(lastIndex, i, gapLimit);
        boolean sameCell =
            (stamp - 1) / CELL_MS == (record.stampMs(level.row(lastIndex)) - 1) / CELL_MS;
        if (link == LevelNodes.Link.STEP && sameCell) {
          extend(stamp, i);
        } else {
          links[size - 1] = link;
          start(stamp, i);
        }
      }
      lastIndex = i;
    }
    return new LevelNodes(
        Arrays.copyOf(timeMs, size),
        Arrays.copyOf(levelMm, size),
        Arrays.copyOf(readings, size),
        Arrays.copyOf(firstIndex, size),
        Arrays.copyOf(links, Math.max(0, size - 1)));
  }

  /** A stamp on the edge of a ruling is still evidence of the level outside. */
  private boolean inside(int ruling, long stamp) {
    return ruling < rulings.size() && rulings.get(ruling).interval().fromMs() < stamp;
  }

  /**
   * A late catch that runs into the end of the record, or into a ruling across which the level
   * doesn't compare, is measured by the reading inside it that lies nearest to that end.
   */
  private boolean lastWord(int ruling, int index) {
    Ruling late = rulings.get(ruling);
    if (late.kind() != Ruling.Kind.LATE) {
      return false;
    }
    boolean last =
        index + 1 == level.size() || record.stampMs(level.row(index + 1)) >= late.interval().toMs();
    boolean first = index == 0 || record.stampMs(level.row(index - 1)) <= late.interval().fromMs();
    boolean nothingAfter = index + 1 == level.size();
    boolean nothingBefore = index == 0;
    return (last && (nothingAfter || breaksAt(ruling + 1, late.interval().toMs())))
        || (first && (nothingBefore || breaksAt(ruling - 1, late.interval().fromMs())));
  }

  private boolean breaksAt(int ruling, long epochMs) {
    return ruling >= 0
        && ruling < rulings.size()
        && rulings.get(ruling).kind() != Ruling.Kind.LATE
        && (rulings.get(ruling).interval().fromMs() == epochMs
            || rulings.get(ruling).interval().toMs() == epochMs);
  }

  private void start(long stamp, int index) {
    timeMs[size] = stamp;
    levelMm[size] = level.levelMm(index);
    readings[size] = 1;
    firstIndex[size] = index;
    size++;
  }

  private void extend(long stamp, int index) {
    int node = size - 1;
    int n = ++readings[node];
    timeMs[node] += Math.round((stamp - timeMs[node]) / (double) n);
    levelMm[node] += (level.levelMm(index) - levelMm[node]) / n;
  }

  private LevelNodes.Link link(int before, int after, GapLimit gapLimit) {
    long from = record.stampMs(level.row(before));
    long to = record.stampMs(level.row(after));
    boolean late = false;
    for (int r = RulingSearch.firstEndingAfter(rulings, from); r < rulings.size(); r++) {
      Ruling ruling = rulings.get(r);
      if (ruling.interval().fromMs() >= to) {
        break;
      }
      if (ruling.kind() != Ruling.Kind.LATE) {
        return LevelNodes.Link.BREAK;
      }
      late = true;
    }
    if (level.segment(before) != level.segment(after)) {
      return LevelNodes.Link.BREAK;
    }
    if (late) {
      return LevelNodes.Link.LATE;
    }
    boolean gap = to - from > gapLimit.at(level.row(after));
    return gap ? LevelNodes.Link.GAP : LevelNodes.Link.STEP;
  }

  /** Looks up the sampling run of rows asked for in increasing order. */
  static final class GapLimit {

    /** A silence up to this long is never a gap [ms]. */
    private static final long SHORTEST_GAP_MS = 600_000;

    /** A silence longer than this always is a gap: an hour's total can't be told across it [ms]. */
    private static final long LONGEST_SILENCE_MS = 5_400_000;

    private final List<SamplingRun> runs;
    private int run;

    GapLimit(SeasonRecord record) {
      this.runs = record.sampling();
    }

    /** The longest silence before a row that isn't a gap [ms]. */
    long at(int row) {
      while (run + 1 < runs.size() && runs.get(run).lastRow() < row) {
        run++;
      }
      long usual = runs.get(run).intervalMs() * 3 / 2;
      return Math.min(LONGEST_SILENCE_MS, Math.max(SHORTEST_GAP_MS, usual));
    }
  }
}
