package org.rimebook.desk.report;

import java.awt.Window;
import java.util.List;
import java.util.function.Supplier;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.FigureModel;
import org.rimebook.desk.model.ReportModel;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;

/** What leaves for paper, the report and figures, as commands that open their dialogs. */
public final class PaperDialogs {

  private final Workspace workspace;
  private final Tasks tasks;
  private final ReportModel report;
  private final FigureModel figure;
  private final Supplier<Window> owner;

  /**
   * @param workspace the season
   * @param tasks works away from the event thread
   * @param owner the window dialogs belong to
   */
  public PaperDialogs(Workspace workspace, Tasks tasks, Supplier<Window> owner) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.report = new ReportModel(workspace, tasks);
    this.figure = new FigureModel(workspace, tasks);
    this.owner = owner;
  }

  /** The commands. */
  public List<DeskAction> actions() {
    List<DeskAction> actions =
        List.of(
            DeskAction.named(Group.SEASON, "Report…", this::report)
                .saying("Makes the report that a reviewer signs, and shows it")
                .key("control P")
                .mnemonic('P')
                .when(this::open)
                .done(),
            DeskAction.named(Group.VIEW, "Export figure…", this::figure)
                .saying("Saves the view in sight as a figure for a paper")
                .key("control shift E")
                .mnemonic('X')
                .when(this::open)
                .done());
    workspace.opened().watch(opened -> actions.forEach(DeskAction::refresh));
    return actions;
  }

  private boolean open() {
    return workspace.opened().get().isPresent();
  }

  private void report() {
    new ReportDialog(owner.get(), report, tasks).setVisible(true);
  }

  private void figure() {
    new FigureDialog(owner.get(), figure).setVisible(true);
  }
}
