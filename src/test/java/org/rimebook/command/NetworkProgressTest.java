package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.rimebook.export.network.NetworkRun.Outcome;
import org.rimebook.export.network.SeasonFolder;

class NetworkProgressTest {

  private static final long S = 1_000_000_000;

  private final StringWriter told = new StringWriter();
  private final AtomicLong nowNs = new AtomicLong(7);
  private final NetworkProgress progress =
      new NetworkProgress(100, new PrintWriter(told), nowNs::get);

  private void after(long seconds, String name, Outcome outcome) {
    nowNs.addAndGet(seconds * S);
    progress.done(new SeasonFolder(name, Path.of(name)), outcome);
  }

  @Test
  void theTimeLeftFollowsFromWhatWasMadeSoFar() {
    after(0, "a", Outcome.KEPT);
    after(10, "b", Outcome.MADE);
    after(0, "c", Outcome.FAILED);
    after(10, "d", Outcome.MADE);
    assertThat(told.toString().lines())
        .containsExactly(
            "1/100 a: kept",
            "2/100 b: made, about 16 min left",
            "3/100 c: failed, about 16 min left",
            "4/100 d: made, about 16 min left");
  }

  @Test
  void theLastSeasonLeavesNothing() {
    for (int i = 1; i <= 100; i++) {
      after(1, "s", Outcome.MADE);
    }
    assertThat(told.toString())
        .contains("99/100 s: made, about 1 s left")
        .endsWith("100/100 s: made" + System.lineSeparator());
  }
}
