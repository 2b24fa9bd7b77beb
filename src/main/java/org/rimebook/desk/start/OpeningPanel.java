package org.rimebook.desk.start;

import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.task.Tasks;

/** How far opening a season has come, and a way to call it off. */
public final class OpeningPanel extends JPanel {

  private static final int STEPS = 1000;

  private final JLabel name = Words.label(" ", () -> Look.bold(1.4), Look::ink);
  private final JLabel stage = Words.label(" ", () -> Look.text(1), Look::muted);
  private final JProgressBar bar = new JProgressBar(0, STEPS);
  private final JButton cancel = new JButton("Cancel");

  /**
   * @param tasks whose lane of opening is shown
   * @param cancelled done when it is called off, which this alone doesn't do
   */
  public OpeningPanel(Tasks tasks, Runnable cancelled) {
    super(new MigLayout("insets 32, wrap 1, align 50% 40%", "[" + 420 + "!]", "[]4[]16[]16[]"));
    add(name, "wmax 420");
    add(stage);
    add(bar, "growx, h 6!");
    add(cancel);
    bar.getAccessibleContext().setAccessibleName("How much is done");
    cancel.setMnemonic('C');
    cancel.addActionListener(event -> cancelled.run());
    registerKeyboardAction(
        event -> cancelled.run(),
        KeyStroke.getKeyStroke("ESCAPE"),
        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    tasks.watch(this::show);
  }

  /** Puts the focus where Escape, Enter and Space call it off. */
  void focus() {
    cancel.requestFocusInWindow();
  }

  private void show(Tasks.Running running) {
    if (running.lane() != Tasks.Lane.OPEN || running.over()) {
      return;
    }
    name.setText(running.name());
    stage.setText(running.stage().isEmpty() ? " " : capitalised(running.stage()));
    bar.setIndeterminate(running.share() < 0);
    bar.setValue((int) Math.round(STEPS * Math.max(0, running.share())));
  }

  private static String capitalised(String words) {
    int first = words.codePointAt(0);
    return Character.toString(Character.toUpperCase(first))
        + words.substring(Character.charCount(first));
  }
}
