package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.rimebook.fixture.Bucket;

class MoistAirProperties {

  private static final long HOUR_MS = 3_600_000;

  @Property(tries = 300)
  void airIsAsMoistAsItIsWetWithinAnHour(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 40) int size) {
    Random chance = new Random(seed);
    double[] wet = chance.doubles(size).toArray();
    long[] timeMs = new long[size];
    timeMs[0] = Bucket.ms(0);
    for (int i = 1; i < timeMs.length; i++) {
      timeMs[i] = timeMs[i - 1] + (1 + chance.nextInt(150)) * 60_000L;
    }
    LevelNodes.Link[] links = new LevelNodes.Link[timeMs.length - 1];
    Arrays.fill(links, LevelNodes.Link.STEP);
    LevelNodes nodes =
        new LevelNodes(timeMs, new double[size], new int[size], new int[size], links);
    double[] moist = MoistAir.of(nodes, wet);
    for (int link = 0; link < links.length; link++) {
      double most = 0;
      for (int other = 0; other < links.length; other++) {
        boolean near =
            timeMs[other + 1] > timeMs[link] - HOUR_MS
                && timeMs[other] < timeMs[link + 1] + HOUR_MS;
        most = near ? Math.max(most, wet[other]) : most;
      }
      assertThat(moist[link]).isEqualTo(most);
    }
  }
}
