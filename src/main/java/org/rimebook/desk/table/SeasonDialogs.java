package org.rimebook.desk.table;

import java.awt.Window;
import java.util.List;
import java.util.function.Supplier;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.ExportModel;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.SignOffModel;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;

/** Signing off and writing the tables, as commands that open their dialogs. */
public final class SeasonDialogs {

  private final Workspace workspace;
  private final SignOffModel signOff;
  private final ExportModel export;
  private final Supplier<Window> owner;
  private final List<DeskAction> actions;

  /**
   * @param workspace the season
   * @param keeper writes the sign-off
   * @param tasks writes the tables away from the event thread
   * @param owner the window dialogs belong to
   */
  public SeasonDialogs(
      Workspace workspace, SeasonKeeper keeper, Tasks tasks, Supplier<Window> owner) {
    this.workspace = workspace;
    this.signOff = new SignOffModel(workspace, keeper);
    this.export = new ExportModel(workspace, tasks);
    this.owner = owner;
    this.actions = List.of(exporting(), signing());
    workspace.opened().watch(opened -> actions.forEach(DeskAction::refresh));
  }

  /** The commands. */
  public List<DeskAction> actions() {
    return actions;
  }

  private DeskAction exporting() {
    return DeskAction.named(Group.SEASON, "Export tables…", this::export)
        .saying("Writes the hourly and daily tables, the summary and their description")
        .key("control E")
        .mnemonic('E')
        .when(() -> workspace.opened().get().isPresent())
        .done();
  }

  private DeskAction signing() {
    return DeskAction.named(Group.SEASON, "Sign off…", this::signOff)
        .saying("States that the totals are defended as they are, with your initials")
        .mnemonic('G')
        .when(() -> workspace.opened().get().isPresent())
        .done();
  }

  private void export() {
    new ExportDialog(owner.get(), workspace, export).setVisible(true);
  }

  private void signOff() {
    new SignOffDialog(owner.get(), workspace, signOff).setVisible(true);
  }
}
