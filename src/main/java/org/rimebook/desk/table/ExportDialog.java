package org.rimebook.desk.table;

import java.awt.BorderLayout;
import java.awt.Window;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.model.ExportModel;
import org.rimebook.desk.model.Workspace;

/** Asks where the tables go; stays while they are written, unless it is closed. */
final class ExportDialog extends DeskDialog {

  ExportDialog(Window owner, Workspace workspace, ExportModel model) {
    super(owner, "Export tables", new JPanel(new BorderLayout()));
    ExportPanel panel = new ExportPanel(model, workspace.resolution().get());
    JButton cancel = new JButton("Cancel");
    cancel.addActionListener(
        event -> {
          model.cancel();
          dispose();
        });
    JPanel foot = new JPanel(new MigLayout("insets 0 16 16 16, gap 8", "push[][]"));
    foot.add(cancel);
    foot.add(panel.write());
    add(panel, BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
    getRootPane().setDefaultButton(panel.write());
    until(
        model
            .state()
            .follow(
                state -> {
                  if (panel.show(state)) {
                    dispose();
                  }
                }));
    pack();
    setLocationRelativeTo(owner);
  }
}
