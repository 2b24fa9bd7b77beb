package org.rimebook.desk.table;

import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.ShortTime;
import org.rimebook.desk.model.WhyModel;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.findings.Finding;
import org.rimebook.season.why.Explanation;
import org.rimebook.season.why.Line;
import org.rimebook.season.why.Section;
import org.rimebook.station.Interval;

/** Why a total is what it is: what it rests on, each part a way to where it comes from. */
public final class WhyPanel extends JPanel {

  /** Width from which figures stand in a column of their own, at 100 %. */
  private static final int ROOMY = 420;

  private final Workspace workspace;
  private final WhyModel model;
  private final Prose title = Prose.title();
  private final Sheet body =
      new Sheet(new MigLayout("insets 0 16 16 16, gap 0 0, wrap 1", "[grow, fill, 0:0]"));
  private final JScrollPane scroll = new JScrollPane(body);
  private final transient Consumer<Finding> review;
  private Optional<Interval> shown = Optional.empty();
  private boolean roomy;

  /**
   * @param workspace where totals are asked about
   * @param tasks explains away from the event thread
   * @param review puts a finding under review
   */
  public WhyPanel(Workspace workspace, Tasks tasks, Consumer<Finding> review) {
    super(new BorderLayout());
    this.workspace = workspace;
    this.review = review;
    this.model = new WhyModel(workspace, tasks);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    add(head(), BorderLayout.NORTH);
    add(scroll, BorderLayout.CENTER);
    getAccessibleContext().setAccessibleName("Why this total");
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "close");
    getActionMap()
        .put(
            "close",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                close();
              }
            });
    model.explanation().follow(this::show);
  }

  private JPanel head() {
    JPanel head = new JPanel(new MigLayout("insets 8 16 8 8, gap 8 0", "[grow, fill, 0:0]8[]8[]"));
    JButton go = new JButton("Go there");
    go.setToolTipText("Shows the time of this total in the strips");
    go.addActionListener(event -> workspace.asked().get().ifPresent(this::go));
    JButton close = new JButton("Close");
    close.setToolTipText("Closes this page (Escape)");
    close.addActionListener(event -> close());
    model
        .explanation()
        .follow(
            explanation -> {
              go.setVisible(explanation.isPresent());
              close.setVisible(explanation.isPresent());
            });
    head.add(Words.label("Why", () -> Look.text(1), Look::muted), "wmin 0");
    head.add(go);
    head.add(close, "wrap");
    head.add(title, "spanx, growx, gaptop 4, w 0:0:");
    return head;
  }

  /** Lines are laid out anew where there comes to be room for a column of figures, or none. */
  @Override
  public void doLayout() {
    if (roomy != getWidth() >= Look.px(ROOMY)) {
      roomy = !roomy;
      show(model.explanation().get());
    }
    super.doLayout();
  }

  private void close() {
    workspace.asked().set(Optional.empty());
  }

  private void go(Interval span) {
    workspace.selection().set(workspace.selection().get().only(span));
    long margin = span.lengthMs();
    workspace.view().go(new Interval(span.fromMs() - margin, span.toMs() + margin));
  }

  /** Lays an explanation out; one of the same total anew stays scrolled where it is. */
  private void show(Optional<Explanation> explanation) {
    body.removeAll();
    if (explanation.isEmpty()) {
      title.setText(" ");
      body.add(
          Prose.quiet(
              "Double-click a total, or press W on it, to see the readings, wires and entries"
                  + " behind it."),
          "wmin 0");
    } else {
      lay(explanation.get());
    }
    if (!shown.equals(explanation.map(Explanation::interval))) {
      shown = explanation.map(Explanation::interval);
      scroll.getVerticalScrollBar().setValue(0);
    }
    body.revalidate();
    body.repaint();
  }

  private void lay(Explanation explanation) {
    ShortTime time =
        new ShortTime(workspace.opened().get().orElseThrow().season().sheet().utcOffset());
    title.setText(time.span(explanation.interval()));
    List<String> wires =
        workspace.opened().get().orElseThrow().season().sheet().wires().stream()
            .map(wire -> wire.name())
            .toList();
    WhyLine lines =
        new WhyLine(time, wires, roomy, new WhyLine.To(this::ask, this::choose, review));
    explanation.sections().forEach(section -> lay(section, lines));
    lay(explanation.adjusted(), lines);
  }

  private void lay(Section section, WhyLine lines) {
    String label = section.label().equals("u") ? "uncertainty" : section.label();
    body.add(Words.label(label, () -> Look.text(1), Look::muted), "gaptop 12, wmin 0");
    for (Line line : section.lines()) {
      body.add(lines.of(line), "gaptop 4, wmin 0");
    }
  }

  private void ask(Interval span) {
    if (span.lengthMs() <= 24 * 3_600_000L
        && shown.map(i -> i.lengthMs() >= span.lengthMs()).orElse(false)) {
      workspace.asked().set(Optional.of(span));
    }
    go(span);
  }

  private void choose(String entry, Interval span) {
    workspace.selection().set(workspace.selection().get().of(entry, List.of(span)));
    long margin = Math.max(span.lengthMs(), 3_600_000L);
    workspace.view().go(new Interval(span.fromMs() - margin, span.toMs() + margin));
  }
}
