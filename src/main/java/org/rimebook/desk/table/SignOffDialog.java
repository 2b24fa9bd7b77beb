package org.rimebook.desk.table;

import java.awt.Window;
import javax.swing.JPanel;
import org.rimebook.desk.model.SignOffModel;
import org.rimebook.desk.model.Workspace;

/** Asks for the sign-off. */
final class SignOffDialog extends DeskDialog {

  SignOffDialog(Window owner, Workspace workspace, SignOffModel model) {
    super(owner, "Sign off", new JPanel());
    SignOffPanel panel = new SignOffPanel(model, this::dispose);
    setContentPane(panel);
    getRootPane().setDefaultButton(panel.sign());
    until(workspace.computed().watch(computed -> panel.refresh()));
    pack();
    setLocationRelativeTo(owner);
  }
}
