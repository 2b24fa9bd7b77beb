package org.rimebook.desk.task;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.rimebook.station.Progress;

/** Tasks on threads of their own. To be used from the event thread. */
public final class SwingTasks implements Tasks {

  private static final int HEAR_EVERY_MS = 33;
  private static final Executor THREADS = Executors.newCachedThreadPool(SwingTasks::thread);

  private final Map<Lane, Job<?>> jobs = new EnumMap<>(Lane.class);
  private final List<Consumer<Running>> watchers = new CopyOnWriteArrayList<>();

  @Override
  public <T> void run(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
    cancel(lane);
    Job<T> job = new Job<>(new Task<>(lane, name, work, done, failed));
    jobs.put(lane, job);
    tell(new Running(lane, name, "", -1, false));
    THREADS.execute(job.future);
  }

  @Override
  public void cancel(Lane lane) {
    Job<?> job = jobs.remove(lane);
    if (job != null) {
      job.future.cancel(false);
      tell(new Running(lane, job.task.name(), "", 1, true));
    }
  }

  @Override
  public void watch(Consumer<Running> watcher) {
    watchers.add(watcher);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "task");
    thread.setDaemon(true);
    return thread;
  }

  private void tell(Running running) {
    watchers.forEach(watcher -> watcher.accept(running));
  }

  private record Task<T>(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {}

  /**
   * A piece of work under way. Not a SwingWorker: that delivers by a timer, up to a thirtieth of a
   * second after it has a result.
   */
  private final class Job<T> implements Progress {
    private final Task<T> task;
    private final AtomicReference<Running> reached = new AtomicReference<>();
    private final FutureTask<T> future =
        new FutureTask<>(() -> task().work().run(this)) {
          @Override
          protected void done() {
            SwingUtilities.invokeLater(Job.this::deliver);
          }
        };

    /**
     * How far it is is told now and then only, so that quick work doesn't crowd the event thread.
     */
    private final Timer hearing = new Timer(HEAR_EVERY_MS, event -> hear());

    Job(Task<T> task) {
      this.task = task;
      hearing.setRepeats(false);
    }

    private Task<T> task() {
      return task;
    }

    @Override
    public void at(String stage, double share) {
      Running now = new Running(task.lane(), task.name(), stage, share, false);
      if (reached.getAndSet(now) == null) {
        hearing.start();
      }
    }

    @Override
    public boolean cancelled() {
      return future.isCancelled();
    }

    private void hear() {
      Running now = reached.getAndSet(null);
      if (jobs.get(task.lane()) == this) {
        tell(now);
      }
    }

    private void deliver() {
      if (!jobs.remove(task.lane(), this)) {
        return;
      }
      tell(new Running(task.lane(), task.name(), "", 1, true));
      try {
        task.done().accept(future.get());
      } catch (ExecutionException e) {
        if (!(e.getCause() instanceof CancellationException)) {
          task.failed().accept(e.getCause());
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
