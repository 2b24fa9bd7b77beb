package org.rimebook.desk.strip;

import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Neighbour;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.StripSetting;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/** Asks for a neighbour's daily table and shows it as a strip; asked again, takes it away. */
final class NeighbourChoice {

  private final Workspace workspace;
  private final Tasks tasks;
  private final Component above;

  NeighbourChoice(Workspace workspace, Tasks tasks, Component above) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.above = above;
  }

  /** Shows a table that is asked for, or no longer shows the one there is. */
  void toggle() {
    if (workspace.neighbour().get().isPresent()) {
      workspace.neighbour().set(Optional.empty());
      return;
    }
    JFileChooser chooser =
        new JFileChooser(workspace.opened().get().map(o -> o.folder().toFile()).orElse(null));
    chooser.setDialogTitle("Daily totals of a neighbouring station");
    chooser.setFileFilter(new FileNameExtensionFilter("Tables (*.csv)", "csv"));
    if (chooser.showDialog(above, "Show") == JFileChooser.APPROVE_OPTION) {
      show(chooser.getSelectedFile().toPath());
    }
  }

  /** Shows a table, or tells why it can't be. */
  void show(Path table) {
    tasks.run(
        Lane.NEIGHBOUR,
        "Reading the neighbour's table",
        progress -> Neighbour.read(table),
        this::shown,
        fault -> workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault))));
  }

  private void shown(Neighbour neighbour) {
    List<StripSetting> settings = workspace.strips().get();
    workspace
        .strips()
        .set(settings.stream().map(s -> s.kind() == Kind.NEIGHBOUR ? s.shown(true) : s).toList());
    workspace.neighbour().set(Optional.of(neighbour));
  }
}
