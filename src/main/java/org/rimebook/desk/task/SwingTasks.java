package org.rimebook.desk.task;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import org.rimebook.station.Progress;

/** Tasks on Swing's worker threads. To be used from the event thread. */
public final class SwingTasks implements Tasks {

  private final Map<Lane, Job<?>> jobs = new EnumMap<>(Lane.class);
  private final List<Consumer<Running>> watchers = new CopyOnWriteArrayList<>();

  @Override
  public <T> void run(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
    cancel(lane);
    Job<T> job = new Job<>(new Task<>(lane, name, work, done, failed));
    jobs.put(lane, job);
    tell(new Running(lane, name, "", -1, false));
    job.execute();
  }

  @Override
  public void cancel(Lane lane) {
    Job<?> job = jobs.remove(lane);
    if (job != null) {
      job.cancel(false);
      tell(new Running(lane, job.task.name(), "", 1, true));
    }
  }

  @Override
  public void watch(Consumer<Running> watcher) {
    watchers.add(watcher);
  }

  private void tell(Running running) {
    watchers.forEach(watcher -> watcher.accept(running));
  }

  private record Task<T>(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {}

  private final class Job<T> extends SwingWorker<T, Running> {
    private final Task<T> task;

    Job(Task<T> task) {
      this.task = task;
    }

    @Override
    protected T doInBackground() throws Exception {
      return task.work().run(new Heard());
    }

    @Override
    protected void process(List<Running> reached) {
      if (jobs.get(task.lane()) == this) {
        tell(reached.get(reached.size() - 1));
      }
    }

    @Override
    protected void done() {
      if (!jobs.remove(task.lane(), this)) {
        return;
      }
      tell(new Running(task.lane(), task.name(), "", 1, true));
      try {
        task.done().accept(get());
      } catch (ExecutionException e) {
        if (!(e.getCause() instanceof CancellationException)) {
          task.failed().accept(e.getCause());
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    private final class Heard implements Progress {
      @Override
      public void at(String stage, double share) {
        publish(new Running(task.lane(), task.name(), stage, share, false));
      }

      @Override
      public boolean cancelled() {
        return isCancelled();
      }
    }
  }
}
