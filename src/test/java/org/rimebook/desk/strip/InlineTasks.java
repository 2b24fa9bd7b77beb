package org.rimebook.desk.strip;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import org.rimebook.desk.task.Tasks;
import org.rimebook.station.Progress;

/** Does everything at once, on the thread that asks. */
final class InlineTasks implements Tasks {

  @Override
  public <T> void run(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
    FutureTask<T> task = new FutureTask<>(() -> work.run(Progress.NONE));
    task.run();
    T made;
    try {
      made = task.get();
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    } catch (ExecutionException e) {
      failed.accept(e.getCause());
      return;
    }
    done.accept(made);
  }

  @Override
  public void cancel(Lane lane) {}

  @Override
  public void watch(Consumer<Running> watcher) {}
}
