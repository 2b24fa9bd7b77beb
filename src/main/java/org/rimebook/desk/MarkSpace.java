package org.rimebook.desk;

import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Workspace;

/** The room of the mark bar. It is kept when there is nothing to mark, so that no strip jumps. */
final class MarkSpace extends JPanel {

  private static final int HEIGHT = 56;

  private static final String IDLE =
      "Drag over the strips to mark an interval; press F1 for the keys";
  private static final String REVIEWING =
      "A accepts, M changes, X dismisses; N goes on, P back; Esc leaves the finding";

  private final JLabel hint = Words.label(IDLE, () -> Look.text(1), Look::muted);

  private final JComponent bar;

  MarkSpace(JComponent bar, Workspace workspace) {
    super(new MigLayout("insets 4 0 4 0, hidemode 3, gap 0, fillx", "[grow, fill]"));
    hint.setBorder(BorderFactory.createEmptyBorder(8, 8, 8, 8));
    add(hint, "wrap");
    add(bar);
    this.bar = bar;
    bar.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentShown(ComponentEvent event) {
            tell(workspace);
          }

          @Override
          public void componentHidden(ComponentEvent event) {
            tell(workspace);
          }
        });
    workspace.selection().follow(selection -> tell(workspace));
    workspace.draft().watch(draft -> tell(workspace));
    workspace.findings().watch(left -> tell(workspace));
  }

  private void tell(Workspace workspace) {
    boolean idle = workspace.selection().get().isNone() && workspace.draft().get().isEmpty();
    boolean reviewing = workspace.findings().get().reviewed().isPresent();
    hint.setText(reviewing ? REVIEWING : IDLE);
    hint.setVisible(idle || reviewing && !bar.isVisible());
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension wanted = super.getPreferredSize();
    return new Dimension(wanted.width, Math.max(Look.px(HEIGHT), wanted.height));
  }
}
