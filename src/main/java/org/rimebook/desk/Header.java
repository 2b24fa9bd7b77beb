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
  private final JLabel left = new JLabel(" ");
  private final JLabel notes = new JLabel(" ");
  private final JLabel state = new JLabel(" ");

  Header(Workspace workspace) {
    super(new MigLayout("insets 8 16 8 16", "[]16[grow]16[]16[]16[]", "[baseline]"));
    add(name);
    add(answer);
    add(left);
    add(notes);
    add(state);
    workspace
        .opened()
        .follow(opened -> name.setText(opened.map(o -> o.season().sheet().name()).orElse(" ")));
    workspace.opened().watch(opened -> tell(workspace));
    workspace.computed().watch(computed -> tell(workspace));
    workspace.findings().watch(found -> tell(workspace));
    left.getAccessibleContext().setAccessibleName("Findings left");
    name.getAccessibleContext().setAccessibleName("Station");
    answer.getAccessibleContext().setAccessibleName("Season's catch");
    state.getAccessibleContext().setAccessibleName("Sign-off");
    dress();
  }

  private void tell(Workspace workspace) {
    notes.setText(workspace.opened().get().map(ReadingNotes::count).orElse(""));
    boolean open = workspace.opened().get().isPresent();
    left.setText(open ? workspace.findings().get().count() : "");
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
    notes.setForeground(Look.muted());
    left.setForeground(Look.muted());
  }
}
