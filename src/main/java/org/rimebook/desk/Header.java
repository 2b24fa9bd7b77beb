package org.rimebook.desk;

import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.SeasonHeadline;
import org.rimebook.desk.model.Workspace;

/**
 * The line at the top: which season this is and what it comes to; two lines where one is too short.
 */
final class Header extends JPanel {

  private final JLabel name = Words.label(" ", () -> Look.bold(1.25), Look::ink);
  private final JLabel answer = new JLabel(" ");
  private final JLabel left = quiet();
  private final JLabel notes = quiet();
  private final JLabel state = quiet();
  private final JPanel season;
  private final JPanel rest;

  Header(Workspace workspace) {
    super(new MigLayout("insets 8 16 8 16, gapy 2", "[grow]16[]"));
    season = row(name, answer);
    rest = row(left, notes, state);
    add(season);
    add(rest);
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
  }

  private static JLabel quiet() {
    return Words.label(" ", () -> Look.text(1), Look::muted);
  }

  private static JPanel row(JLabel... labels) {
    JPanel row = new JPanel(new MigLayout("insets 0, gapx 16", "", "[baseline]"));
    for (JLabel label : labels) {
      row.add(label);
    }
    row.setOpaque(false);
    return row;
  }

  @Override
  public void doLayout() {
    int wanted = season.getPreferredSize().width + rest.getPreferredSize().width + Look.px(48);
    String place = wanted > getWidth() ? "newline" : "";
    MigLayout layout = (MigLayout) getLayout();
    if (!place.equals(layout.getComponentConstraints(rest))) {
      layout.setComponentConstraints(rest, place);
      // The height changes while the width is being given out: asked for anew after that.
      SwingUtilities.invokeLater(this::revalidate);
    }
    super.doLayout();
  }

  private void tell(Workspace workspace) {
    notes.setText(workspace.opened().get().map(ReadingNotes::count).orElse(""));
    boolean open = workspace.opened().get().isPresent();
    left.setText(open ? workspace.findings().get().count() : "");
    SeasonHeadline headline = SeasonHeadline.of(workspace);
    answer.setText(headline.total());
    state.setText(headline.signOff());
  }
}
