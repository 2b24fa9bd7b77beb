package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SamplingTest {

  private static final long MINUTE = 60_000;

  @TempDir Path folder;

  private static long[] stamps(long... steps) {
    long[] stamps = new long[steps.length + 1];
    for (int i = 0; i < steps.length; i++) {
      stamps[i + 1] = stamps[i] + steps[i];
    }
    return stamps;
  }

  private static long[] repeat(long step, int times) {
    return LongStream.generate(() -> step).limit(times).toArray();
  }

  private static long[] join(long[]... parts) {
    return java.util.Arrays.stream(parts).flatMapToLong(LongStream::of).toArray();
  }

  @Test
  void aChangeOfIntervalStartsARun() {
    long[] stamps = stamps(join(repeat(10 * MINUTE, 20), repeat(MINUTE, 30)));
    assertThat(SamplingFinder.find(stamps, false))
        .containsExactly(new SamplingRun(0, 20, 10 * MINUTE), new SamplingRun(21, 50, MINUTE));
    assertThat(SamplingFinder.find(stamps, true))
        .containsExactly(new SamplingRun(0, 19, 10 * MINUTE), new SamplingRun(20, 50, MINUTE));
  }

  @Test
  void gapsAndJitterDoNotEndARun() {
    long[] steps = repeat(10 * MINUTE, 60);
    steps[7] = 30 * MINUTE;
    steps[20] = 40 * 24 * 60 * MINUTE;
    steps[30] += 1000;
    steps[31] -= 1000;
    steps[40] = 3 * MINUTE;
    assertThat(SamplingFinder.find(stamps(steps), false))
        .containsExactly(new SamplingRun(0, 60, 10 * MINUTE));
  }

  @Test
  void aShortRecordHasItsCommonestStep() {
    assertThat(SamplingFinder.find(stamps(MINUTE, 5 * MINUTE, MINUTE), false))
        .containsExactly(new SamplingRun(0, 3, MINUTE));
    assertThat(SamplingFinder.find(new long[] {5}, false))
        .containsExactly(new SamplingRun(0, 0, 0));
  }

  @Test
  void secondsAreToldApartThoughTheyDifferByASecond() {
    long[] stamps = stamps(join(repeat(1000, 20), repeat(2000, 20)));
    assertThat(SamplingFinder.find(stamps, false)).hasSize(2);
  }

  @Test
  void stampsAtTheStartAreMovedToTheEndOfTheirInterval() throws Exception {
    StringBuilder text = new StringBuilder(Season.HEADER);
    text.append(Season.tenMinutes("2024-11-30", 0, 12));
    for (int minute = 0; minute < 20; minute++) {
      text.append(String.format("2024-11-30 02:%02d,1500,1600,-3%n", minute));
    }
    text.append(Season.tenMinutes("2024-11-30", 3, 12));
    SeasonRecord record = Season.of(folder, text.toString()).stampsAreStarts().read();
    List<String> rows = Season.rows(record);
    assertThat(rows.get(0)).startsWith("2024-11-30T07:10:00Z");
    assertThat(rows.get(11)).startsWith("2024-11-30T09:00:00Z");
    assertThat(rows.get(12)).startsWith("2024-11-30T09:01:00Z");
    assertThat(rows.get(43)).startsWith("2024-11-30T12:00:00Z");
    assertThat(record.sampling()).hasSize(3);
  }
}
