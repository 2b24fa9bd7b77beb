package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;

class DepthRevisionProperties {

  private static final int ROWS = 3000;

  private final StationSheet sheet = Gauges.sheet(3);

  /** Three wires in rain and noise, with spikes and missing readings. */
  private static double[][] wires(long seed) {
    Random random = new Random(seed);
    double[][] depthMm = new double[3][ROWS];
    double level = 100;
    for (int row = 0; row < ROWS; row++) {
      level += row / 500 % 2 == 1 ? 0.02 : 0;
      for (double[] wire : depthMm) {
        double spike = random.nextInt(60) == 0 ? 5 * random.nextGaussian() : 0;
        wire[row] = level + 0.02 * random.nextGaussian() + spike;
        wire[row] = random.nextInt(80) == 0 ? Double.NaN : wire[row];
      }
    }
    return depthMm;
  }

  private Entry entry(boolean visit, int from, int length, int wire) {
    return visit
        ? Gauges.visit(from, from + length)
        : Gauges.bad(from, from + length, wire == 3 ? new String[0] : new String[] {"w" + wire});
  }

  @Property(tries = 60)
  void screeningAboutAnEntryIsScreeningOfTheSeason(
      @ForAll long seed,
      @ForAll boolean visit,
      @ForAll @IntRange(max = 2990) int from,
      @ForAll @IntRange(min = 1, max = 700) int length,
      @ForAll @IntRange(max = 3) int wire) {
    ConvertedWires converted =
        ConvertedWires.of(Gauges.record(Gauges.MINUTE_MS, wires(seed)), sheet, Progress.NONE);
    Notebook changed = Gauges.notebook(entry(visit, from, length, wire));
    WireDepths before = WireDepthStage.of(converted, Notebook.EMPTY, Progress.NONE);
    WireDepths full = WireDepthStage.of(converted, changed, Progress.NONE);
    Optional<RowRange> rows = WireDepthStage.differing(converted, Notebook.EMPTY, changed);
    WireDepths revised = WireDepthStage.revised(converted, before, changed, rows);
    for (int w = 0; w < 3; w++) {
      assertThat(revised.screening(w)).isEqualTo(full.screening(w));
    }
  }

  @Property(tries = 200)
  void theLevelAboutAnEntryRisesAsThatOfTheSeason(
      @ForAll long seed,
      @ForAll boolean visit,
      @ForAll @IntRange(max = 2990) int from,
      @ForAll @IntRange(min = 1, max = 700) int length,
      @ForAll @IntRange(max = 3) int wire) {
    ConvertedWires converted =
        ConvertedWires.of(Gauges.record(Gauges.MINUTE_MS, wires(seed)), sheet, Progress.NONE);
    Notebook changed = Gauges.notebook(entry(visit, from, length, wire));
    WireDepths before = WireDepthStage.of(converted, Notebook.EMPTY, Progress.NONE);
    WireDepths now = WireDepthStage.of(converted, changed, Progress.NONE);
    RowRange rows = new RowRange(from, Math.min(ROWS, from + length + 1));
    LevelSeries was = WireCombiner.combine(converted, before, Notebook.EMPTY, Progress.NONE);
    LevelSeries full = WireCombiner.combine(converted, now, changed, Progress.NONE);
    LevelSeries revised = LevelRevision.of(converted, now, changed, was, rows).level();
    double[] held = levelsWithHabitsHeldMm(converted, now, changed, was);
    assertThat(revised.size()).isEqualTo(full.size());
    for (int i = 1; i < full.size(); i++) {
      assertThat(revised.row(i)).isEqualTo(full.row(i));
      assertThat(revised.wireMask(i)).isEqualTo(full.wireMask(i));
      assertThat(revised.segment(i)).isEqualTo(full.segment(i));
      if (full.segment(i) == full.segment(i - 1)) {
        assertThat(revised.levelMm(i) - revised.levelMm(i - 1))
            .isCloseTo(held[i] - held[i - 1], within(1e-4));
      }
    }
  }

  /** The level of all rows, what is usual of each wire being as it was learnt before the entry. */
  private static double[] levelsWithHabitsHeldMm(
      ConvertedWires converted, WireDepths now, Notebook changed, LevelSeries was) {
    RowRange all = new RowRange(0, converted.record().size());
    UsableRows rows = UsableRows.of(converted, now, changed, all);
    return WireCombiner.levels(rows, WireCombiner.usedDepthsMm(rows, now), was.habits()).levelMm();
  }
}
