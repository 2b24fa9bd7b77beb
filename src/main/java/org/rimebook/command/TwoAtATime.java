package org.rimebook.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;

/** Does jobs two at a time: a season by the minute takes a few hundred megabytes. */
record TwoAtATime<T>(List<Job<T>> jobs, PrintWriter progress) {

  private static final int AT_A_TIME = 2;

  /**
   * A job.
   *
   * @param name what is said when it is done
   * @param work the work
   */
  record Job<T>(String name, Supplier<T> work) {}

  /** Results in the order of the jobs. */
  List<T> results() throws InterruptedException {
    ExecutorService threads = Executors.newFixedThreadPool(AT_A_TIME);
    try {
      List<Future<T>> running = new ArrayList<>();
      for (Job<T> job : jobs) {
        running.add(threads.submit(job.work()::get));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> future : running) {
        results.add(future.get());
        String name = jobs.get(results.size() - 1).name();
        progress.println(results.size() + "/" + jobs.size() + " " + name);
        progress.flush();
      }
      return results;
    } catch (ExecutionException e) {
      throw new IllegalStateException("a winter couldn't be scored", e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }
}
