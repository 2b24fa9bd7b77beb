package org.rimebook.desk.table;

import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.WindowConstants;
import org.rimebook.desk.model.Watched.Watch;

/** A dialog that Escape closes, and that stops watching when it is closed. */
public abstract class DeskDialog extends JDialog {

  private final List<Watch> watches = new ArrayList<>();

  /**
   * @param owner the window it belongs to
   * @param title its title
   * @param content what it holds
   */
  protected DeskDialog(Window owner, String title, JPanel content) {
    super(owner, title, Dialog.ModalityType.DOCUMENT_MODAL);
    setContentPane(content);
    setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    getRootPane()
        .getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
        .put(KeyStroke.getKeyStroke("ESCAPE"), "close");
    getRootPane()
        .getActionMap()
        .put(
            "close",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                dispose();
              }
            });
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosed(WindowEvent event) {
            watches.forEach(Watch::close);
          }
        });
  }

  /** Ends a watch with the dialog. */
  protected final void until(Watch watch) {
    watches.add(watch);
  }
}
