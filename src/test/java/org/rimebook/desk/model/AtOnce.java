package org.rimebook.desk.model;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import org.rimebook.desk.task.Tasks;
import org.rimebook.station.Progress;

/** Runs each piece of work at once, on the thread that asks for it. */
public final class AtOnce implements Tasks {

  @Override
  public <T> void run(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
    FutureTask<T> task = new FutureTask<>(() -> work.run(Progress.NONE));
    task.run();
    try {
      done.accept(task.get());
    } catch (ExecutionException e) {
      failed.accept(e.getCause());
    } catch (InterruptedException e) {
      throw new AssertionError("nobody interrupts it", e);
    }
  }

  @Override
  public void cancel(Lane lane) {
    // Nothing is ever under way.
  }

  @Override
  public void watch(Consumer<Running> watcher) {
    // Nothing is ever under way.
  }
}
