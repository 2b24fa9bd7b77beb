package org.rimebook.command;

import java.io.PrintWriter;
import java.util.List;
import org.rimebook.practice.bench.BenchRun;
import org.rimebook.practice.bench.Winter;
import org.rimebook.practice.bench.WinterScore;

/** Scores winters. */
record PracticeRun(List<Winter> winters, PrintWriter progress) {

  /** Scores in the order of the winters. */
  List<WinterScore> scores() throws InterruptedException {
    return new TwoAtATime<>(
            winters.stream()
                .map(winter -> new TwoAtATime.Job<>(name(winter), () -> BenchRun.of(winter)))
                .toList(),
            progress)
        .results();
  }

  private static String name(Winter winter) {
    return winter.scenario().label() + ", " + winter.variant().label() + ", seed " + winter.seed();
  }
}
