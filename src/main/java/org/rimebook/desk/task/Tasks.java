package org.rimebook.desk.task;

import java.util.function.Consumer;
import org.rimebook.station.Progress;

/**
 * Runs work away from the event thread and brings its result back to it. Work of one lane replaces
 * what that lane was doing: the older is cancelled, and what it still delivers is dropped.
 */
public interface Tasks {

  /** What a lane is for; each runs one piece of work at a time. */
  enum Lane {
    OPEN,
    PREVIEW,
    SETTLE,
    EXPORT,
    REPORT,
    PAGE,
    FIGURE,
    COMPARE,
    EXPLAIN,
    PREVIEW_FILE,
    AGAINST,
    BRUSH,
    STRIPS,
    CATCH,
    NEIGHBOUR,
    BENCH,
    BENCH_PAGE,
    BENCH_STORE,
    PRINT
  }

  /**
   * Work that can be cancelled.
   *
   * @param <T> what it makes
   */
  @FunctionalInterface
  interface Work<T> {
    /**
     * Does it.
     *
     * @param progress to be told how far it is; throws when the work is cancelled
     * @throws Exception when it can't be done
     */
    T run(Progress progress) throws Exception;
  }

  /**
   * Runs a piece of work.
   *
   * @param lane the lane, whose earlier work is cancelled
   * @param name what it does, in words for the analyst
   * @param work the work, run away from the event thread
   * @param done told the result on the event thread, unless replaced or cancelled meanwhile
   * @param failed told on the event thread why it couldn't be done
   */
  <T> void run(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed);

  /** Cancels what a lane is doing; nothing is delivered. */
  void cancel(Lane lane);

  /** Told on the event thread of what is under way, lane by lane. */
  void watch(Consumer<Running> watcher);

  /**
   * How far a piece of work is.
   *
   * @param lane its lane
   * @param name what it does
   * @param stage what it does now
   * @param share how much is done, 0 to 1; negative when that can't be told
   * @param over whether it has ended
   */
  record Running(Lane lane, String name, String stage, double share, boolean over) {}
}
