package org.rimebook.desk.report;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.ExportModel;
import org.rimebook.desk.model.ReportModel;
import org.rimebook.desk.table.DeskDialog;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/** Makes the report, shows it page by page, and saves it. */
final class ReportDialog extends DeskDialog {

  private static final int PARTS = 100;
  private static final int PAGE_WIDTH = 760;
  private static final int VIEW_HEIGHT = 720;

  private final transient ReportModel model;
  private final transient Tasks tasks;
  private final PageView view = new PageView(new Dimension(pageWidth(), Look.px(VIEW_HEIGHT)));
  private final JScrollPane scroll = new JScrollPane(view);
  private final JProgressBar bar = new JProgressBar(0, PARTS);
  private final JLabel words = new JLabel();
  private final JButton back = new JButton("Previous");
  private final JButton forth = new JButton("Next");
  private final JCheckBox hours = new JCheckBox("Every hour");
  private final JButton save = new JButton("Save as…");
  private final JButton close = new JButton("Cancel");
  private int page;
  private int pages;

  ReportDialog(Window owner, ReportModel model, Tasks tasks) {
    super(owner, "Report", new JPanel(new BorderLayout()));
    this.model = model;
    this.tasks = tasks;
    scroll.getVerticalScrollBar().setUnitIncrement(Look.px(40));
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    bar.getAccessibleContext().setAccessibleName("How far the report is");
    scroll.setPreferredSize(
        new Dimension(
            pageWidth() + scroll.getVerticalScrollBar().getPreferredSize().width + Look.px(4),
            Look.px(VIEW_HEIGHT)));
    add(scroll, BorderLayout.CENTER);
    add(foot(), BorderLayout.SOUTH);
    listen();
    until(model.state().follow(this::show));
    until(model.made().follow(made -> turned(made.isPresent())));
    getRootPane().setDefaultButton(save);
    pack();
    setSize(Math.min(getWidth(), owner.getWidth()), Math.min(getHeight(), owner.getHeight()));
    setLocationRelativeTo(owner);
    model.make(false);
  }

  private static int pageWidth() {
    return Look.px(PAGE_WIDTH);
  }

  /** As wide as a page is drawn: no wider than there is room for, so that lines aren't cut off. */
  private int roomForPage() {
    int room = scroll.getViewport().getWidth();
    return room > 0 ? Math.min(pageWidth(), room) : pageWidth();
  }

  private JPanel foot() {
    JPanel foot = new JPanel(new MigLayout("insets 8 16 12 16, gap 8", "[][][][grow, fill][][][]"));
    back.setMnemonic('P');
    forth.setMnemonic('N');
    hours.setMnemonic('H');
    save.setMnemonic('S');
    back.setToolTipText("Previous page (Page Up)");
    forth.setToolTipText("Next page (Page Down)");
    hours.setToolTipText("Adds every hour as an appendix");
    foot.add(back);
    foot.add(forth);
    foot.add(words);
    foot.add(bar, "hidemode 0");
    foot.add(hours);
    foot.add(close);
    foot.add(save);
    return foot;
  }

  private void listen() {
    back.addActionListener(event -> turn(-1));
    forth.addActionListener(event -> turn(1));
    hours.addActionListener(event -> model.make(hours.isSelected()));
    save.addActionListener(event -> save());
    close.addActionListener(event -> dispose());
    key("PAGE_UP", -1);
    key("PAGE_DOWN", 1);
  }

  private void key(String stroke, int pagesOn) {
    getRootPane()
        .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(stroke), stroke);
    getRootPane()
        .getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                turn(pagesOn);
              }
            });
  }

  @Override
  public void dispose() {
    tasks.cancel(Lane.PAGE);
    model.cancel();
    super.dispose();
  }

  private void show(ExportModel.State state) {
    bar.setVisible(state.busy());
    bar.setIndeterminate(state.share() < 0);
    bar.setValue((int) Math.round(PARTS * Math.max(0, state.share())));
    if (state.busy()) {
      words.setText(state.words());
    }
  }

  private void turned(boolean ready) {
    page = 0;
    pages = 0;
    close.setText(ready ? "Close" : "Cancel");
    save.setEnabled(ready);
    if (ready) {
      draw();
    } else {
      view.clear();
      enableTurning();
    }
  }

  private void turn(int pagesOn) {
    int to = page + pagesOn;
    if (to >= 0 && to < pages) {
      page = to;
      draw();
    }
  }

  private void draw() {
    byte[] pdf = model.made().get().orElseThrow().pdf();
    int wanted = page;
    int width = roomForPage();
    tasks.run(
        Lane.PAGE,
        "Drawing a page",
        progress -> ReportPages.draw(pdf, wanted, width),
        drawn -> {
          pages = drawn.pages();
          view.show(drawn.image());
          scroll.getVerticalScrollBar().setValue(0);
          words.setText("page " + (wanted + 1) + " of " + pages);
          enableTurning();
        },
        fault -> words.setText("The page can't be drawn; the report can be saved"));
  }

  private void enableTurning() {
    back.setEnabled(page > 0);
    forth.setEnabled(page + 1 < pages);
  }

  private void save() {
    new PdfChooser(this, "Report")
        .ask(model.suggestedFile(), model::obstacle)
        .ifPresent(model::save);
  }
}
