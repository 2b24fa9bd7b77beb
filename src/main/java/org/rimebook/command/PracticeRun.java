package org.rimebook.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.rimebook.practice.bench.BenchRun;
import org.rimebook.practice.bench.Winter;
import org.rimebook.practice.bench.WinterScore;

/** Scores winters, two at a time: a season by the minute takes a few hundred megabytes. */
record PracticeRun(List<Winter> winters, PrintWriter progress) {

  private static final int AT_A_TIME = 2;

  /** Scores in the order of the winters. */
  List<WinterScore> scores() throws InterruptedException {
    ExecutorService threads = Executors.newFixedThreadPool(AT_A_TIME);
    try {
      List<Future<WinterScore>> running = new ArrayList<>();
      for (Winter winter : winters) {
        running.add(threads.submit(() -> BenchRun.of(winter)));
      }
      List<WinterScore> scores = new ArrayList<>();
      for (Future<WinterScore> future : running) {
        scores.add(future.get());
        report(scores.size());
      }
      return scores;
    } catch (ExecutionException e) {
      throw new IllegalStateException("a winter couldn't be scored", e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  private void report(int done) {
    Winter winter = winters.get(done - 1);
    progress.println(
        done
            + "/"
            + winters.size()
            + " "
            + winter.scenario().label()
            + ", "
            + winter.variant().label()
            + ", seed "
            + winter.seed());
    progress.flush();
  }
}
