package org.rimebook.desk.model;

import java.util.List;
import java.util.Optional;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.season.why.Explanation;
import org.rimebook.station.Interval;
import org.rimebook.totals.TotalRow;

/** Explains the total that is asked about, and explains it anew when it changes. */
public final class WhyModel {

  private static final long HOUR_MS = 3_600_000;

  private final Workspace workspace;
  private final Tasks tasks;
  private final Watched<Optional<Explanation>> explanation = new Watched<>(Optional.empty());

  /**
   * @param workspace where totals are asked about
   * @param tasks explains away from the event thread
   */
  public WhyModel(Workspace workspace, Tasks tasks) {
    this.workspace = workspace;
    this.tasks = tasks;
    workspace.asked().follow(asked -> renew());
    workspace.computed().watch(this::renewUnlessForeseen);
  }

  /** The explanation; empty when nothing is asked or it isn't there yet. */
  public Watched<Optional<Explanation>> explanation() {
    return explanation;
  }

  /** An explanation is read, not watched: it waits until the entry being made is made. */
  private void renewUnlessForeseen(Optional<Computed> computed) {
    if (computed.map(c -> c.state() != Computed.State.FORESEEN).orElse(true)) {
      renew();
    }
  }

  private void renew() {
    Optional<Interval> asked = workspace.asked().get();
    Optional<Computed> computed = workspace.computed().get();
    if (asked.isEmpty() || computed.isEmpty()) {
      tasks.cancel(Lane.EXPLAIN);
      explanation.set(Optional.empty());
      return;
    }
    tasks.run(
        Lane.EXPLAIN,
        "Explaining the total",
        progress -> explain(computed.get(), asked.get()),
        explanation::set,
        fault -> workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault))));
  }

  private static Optional<Explanation> explain(Computed computed, Interval asked) {
    List<TotalRow> rows =
        asked.lengthMs() <= HOUR_MS ? computed.totals().hourly() : computed.totals().daily();
    return rows.stream()
        .filter(row -> row.interval().contains(asked.fromMs()))
        .findFirst()
        .map(row -> Explanation.of(computed.result(), rows, row, computed.totals().resolution()));
  }
}
