package org.rimebook.desk.table;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/** A workspace without a window, whose tasks are done at once unless they are held. */
final class Desk implements Tasks {

  final Workspace workspace = new Workspace();
  final SeasonKeeper keeper =
      new SeasonKeeper(
          workspace, this, Clock.fixed(Instant.parse("2026-03-02T17:00:00Z"), ZoneOffset.UTC));
  final List<Lane> cancelled = new ArrayList<>();
  private final List<Consumer<Running>> watchers = new ArrayList<>();
  private final List<Runnable> held = new ArrayList<>();
  private Optional<Lane> holding = Optional.empty();

  /** A workspace with a season whose notebook goes into a folder. */
  static Desk with(Bucket bucket, Path folder) {
    Desk desk = new Desk();
    SeasonResult result = bucket.result();
    desk.workspace.opened().set(Optional.of(new Opened(folder, result.stage())));
    desk.compute(result, Computed.State.SETTLED);
    return desk;
  }

  /** Shows another result. */
  void compute(SeasonResult result, Computed.State state) {
    Resolution resolution = workspace.resolution().get();
    workspace.computed().set(Optional.of(new Computed(result, result.totals(resolution), state)));
  }

  /** Holds the work of a lane back from now on. */
  void hold(Lane lane) {
    holding = Optional.of(lane);
  }

  /** Does what was held back. */
  void release() {
    holding = Optional.empty();
    List<Runnable> now = List.copyOf(held);
    held.clear();
    now.forEach(Runnable::run);
  }

  @Override
  public <T> void run(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
    Runnable job = () -> perform(lane, name, work, done, failed);
    if (holding.equals(Optional.of(lane))) {
      held.add(job);
    } else {
      job.run();
    }
  }

  private <T> void perform(
      Lane lane, String name, Work<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
    Progress progress =
        new Progress() {
          @Override
          public void at(String stage, double share) {
            watchers.forEach(w -> w.accept(new Running(lane, name, stage, share, false)));
          }

          @Override
          public boolean cancelled() {
            return false;
          }
        };
    FutureTask<T> task = new FutureTask<>(() -> work.run(progress));
    task.run();
    T made;
    try {
      made = task.get();
    } catch (ExecutionException e) {
      failed.accept(e.getCause());
      return;
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
    done.accept(made);
  }

  @Override
  public void cancel(Lane lane) {
    cancelled.add(lane);
    held.clear();
  }

  @Override
  public void watch(Consumer<Running> watcher) {
    watchers.add(watcher);
  }
}
