package org.rimebook.desk;

import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.SeasonHeadline;
import org.rimebook.desk.model.Workspace;

/** The line at the top: which season this is and what it comes to. */
final class Header extends JPanel {

  private final JLabel name = new JLabel(" ");
  private final JLabel answer = new JLabel(" ");
  private final JLabel state = new JLabel(" ");

  Header(Workspace workspace) {
    super(new MigLayout("insets 8 16 8 16", "[]16[grow]16[]", "[baseline]"));
    add(name);
    add(answer);
    add(state);
    workspace
        .opened()
        .follow(opened -> name.setText(opened.map(o -> o.season().sheet().name()).orElse(" ")));
    workspace.opened().watch(opened -> tell(workspace));
    workspace.computed().watch(computed -> tell(workspace));
    name.getAccessibleContext().setAccessibleName("Station");
    answer.getAccessibleContext().setAccessibleName("Season's catch");
    state.getAccessibleContext().setAccessibleName("Sign-off");
    dress();
  }

  private void tell(Workspace workspace) {
    SeasonHeadline headline = SeasonHeadline.of(workspace);
    answer.setText(headline.total());
    state.setText(headline.signOff());
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (name != null) {
      dress();
    }
  }

  private void dress() {
    Font title = Look.bold(1.25);
    name.setFont(title);
    state.setForeground(Look.muted());
  }
}
