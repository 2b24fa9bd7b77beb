package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.Optional;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.report.SeasonReport;
import org.rimebook.totals.Resolution;

/** Makes the report of the season, the bytes the command line writes, and saves it. */
public final class ReportModel {

  private final Workspace workspace;
  private final Tasks tasks;
  private final WhenSettled work;
  private final Watched<Optional<Made>> made = new Watched<>(Optional.empty());

  /**
   * @param workspace whose season it is
   * @param tasks works away from the event thread
   */
  public ReportModel(Workspace workspace, Tasks tasks) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.work = new WhenSettled(workspace, tasks, Lane.REPORT);
  }

  /** A report. */
  public static final class Made {
    private final byte[] pdf;

    private Made(byte[] pdf) {
      this.pdf = pdf;
    }

    /** Its bytes; not to be changed. */
    public byte[] pdf() {
      return pdf;
    }
  }

  /** How far the making is. */
  public Watched<ExportModel.State> state() {
    return work.state();
  }

  /** The report; empty until it is made. */
  public Watched<Optional<Made>> made() {
    return made;
  }

  /**
   * Makes it anew.
   *
   * @param hours whether with every hour
   */
  public void make(boolean hours) {
    made.set(Optional.empty());
    Resolution resolution = workspace.resolution().get();
    work.make(
        "Making the report",
        (exact, progress) -> {
          SeasonReport report =
              SeasonReport.of(exact, exact.totals(resolution), progress.part(0.1, 1));
          return new Made((hours ? report.withHours() : report).pdf(progress.part(0.1, 1)));
        },
        report -> made.set(Optional.of(report)));
  }

  /** Gives it up, and forgets what was made. */
  public void cancel() {
    work.cancel();
    made.set(Optional.empty());
  }

  /** Where it goes unless told otherwise: beside the tables. */
  public Path suggestedFile() {
    return workspace
        .opened()
        .get()
        .map(o -> o.folder().resolve("totals").resolve(SeasonReport.FILE))
        .orElse(Path.of(SeasonReport.FILE));
  }

  /** Why it can't be saved as a file, and what to do; empty when it can. */
  public Optional<String> obstacle(Path file) {
    return PaperFile.obstacle(workspace, file);
  }

  /** Saves what was made; nothing while there is an obstacle. */
  public void save(Path file) {
    if (made.get().isEmpty() || obstacle(file).isPresent()) {
      return;
    }
    byte[] pdf = made.get().get().pdf();
    tasks.run(
        Lane.EXPORT,
        "Saving the report",
        progress -> PaperFile.write(file, pdf),
        saved -> tell(Notice.Weight.NOTE, "The report is saved as " + saved),
        fault -> tell(Notice.Weight.FAULT, Faults.words(fault)));
  }

  private void tell(Notice.Weight weight, String words) {
    workspace.notice().set(new Notice(weight, words));
  }
}
