package org.rimebook.desk;

import java.awt.Color;
import java.awt.Font;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextArea;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.desk.task.Tasks.Running;

/** The line at the bottom: the last notice, and long work under way with what ends it. */
final class StatusLine extends JPanel {

  /** Work shorter than this isn't worth a word [ms]. */
  private static final int LONG_MS = 400;

  private final Map<Lane, Running> running = new EnumMap<>(Lane.class);
  private final JTextArea words = Words.text("", this::type, this::colour);
  private final JButton gone = new JButton("Dismiss");
  private final JLabel work = new JLabel();
  private final JProgressBar bar = new JProgressBar(0, 1000);
  private final JButton cancel = new JButton("Cancel");
  private boolean fault;
  private final Timer later = new Timer(LONG_MS, event -> refresh());

  StatusLine(Workspace workspace, Tasks tasks) {
    super(new MigLayout("insets 4 16 4 16, hidemode 3", "[grow, fill][][]8[120!]8[]"));
    words.setFocusable(true);
    words.getAccessibleContext().setAccessibleName("Notice");
    bar.getAccessibleContext().setAccessibleName("Progress");
    add(words, "wmin 100");
    add(gone);
    add(work);
    add(bar);
    add(cancel);
    later.setRepeats(false);
    gone.addActionListener(event -> workspace.notice().set(Notice.NONE));
    cancel.addActionListener(event -> longest().ifPresent(r -> tasks.cancel(r.lane())));
    workspace.notice().follow(this::tell);
    tasks.watch(this::hear);
    refresh();
  }

  private void tell(Notice notice) {
    words.setText(notice.words());
    fault = notice.weight() == Notice.Weight.FAULT;
    words.setFont(type());
    words.setForeground(colour());
    boolean any = !notice.words().isEmpty();
    words.setVisible(any);
    gone.setVisible(any);
    visible();
  }

  private Font type() {
    return fault ? Look.bold(1) : Look.text(1);
  }

  private Color colour() {
    return fault ? Look.accent() : Look.ink();
  }

  private void hear(Running heard) {
    if (heard.lane() == Lane.OPEN) {
      return;
    }
    if (heard.over()) {
      running.remove(heard.lane());
      if (running.isEmpty()) {
        later.stop();
      }
      refresh();
    } else {
      boolean first = running.isEmpty();
      running.put(heard.lane(), heard);
      if (first) {
        later.restart();
      } else if (work.isVisible()) {
        refresh();
      }
    }
  }

  private Optional<Running> longest() {
    return running.values().stream().findFirst();
  }

  private void refresh() {
    boolean any = longest().isPresent() && !later.isRunning();
    longest().ifPresent(this::show);
    work.setVisible(any);
    bar.setVisible(any);
    cancel.setVisible(any && longest().orElseThrow().lane() != Lane.SETTLE);
    visible();
  }

  private void show(Running now) {
    work.setText(now.stage().isEmpty() ? now.name() : now.name() + ": " + now.stage());
    bar.setIndeterminate(now.share() < 0);
    bar.setValue((int) Math.round(1000 * Math.max(0, now.share())));
  }

  private void visible() {
    setVisible(words.isVisible() || work.isVisible());
  }
}
