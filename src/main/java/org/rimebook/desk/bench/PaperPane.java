package org.rimebook.desk.bench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.bench.BenchPaper;
import org.rimebook.desk.model.bench.BenchPaper.Made;
import org.rimebook.desk.report.PageView;
import org.rimebook.desk.report.ReportPages;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/** A paper as it will be printed, page under page, as wide as there is room. */
final class PaperPane extends JPanel {

  private static final int WIDEST = 760;
  private static final int NARROWEST = 160;
  private static final int SETTLE_MS = 150;
  private static final String EMPTY =
      "The paper appears here as soon as the form says enough, and follows it.";

  private final transient Tasks tasks;
  private final Sheet sheet =
      new Sheet(new MigLayout("insets 16, wrap 1, gapy 12, fillx", "[grow, fill]"));
  private final JScrollPane scroll = Sheet.scrolling(sheet);
  private final JTextArea empty = Words.text(EMPTY, () -> Look.text(1), Look::muted);
  private final Timer settled = new Timer(SETTLE_MS, event -> draw());
  private transient Optional<Made> shown = Optional.empty();
  private int drawnWidth;
  private boolean dimmed;

  PaperPane(Tasks tasks) {
    super(new BorderLayout());
    this.tasks = tasks;
    settled.setRepeats(false);
    getAccessibleContext().setAccessibleName("Paper");
    scroll.setFocusable(true);
    scroll.getAccessibleContext().setAccessibleName("Pages of the paper");
    add(scroll);
    sheet.add(empty, "wmin 0");
    scroll.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            if (shown.isPresent() && width() != drawnWidth) {
              settled.restart();
            }
          }
        });
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(Look.px(NARROWEST), Look.px(NARROWEST));
  }

  /** Shows a paper; greyed while there is a reason that there is no newer one. */
  void show(BenchPaper paper) {
    dimmed = !paper.current() && !paper.words().isEmpty();
    if (paper.made().isEmpty()) {
      tasks.cancel(Lane.BENCH_PAGE);
      shown = Optional.empty();
      pages(List.of());
    } else if (!paper.made().equals(shown)) {
      shown = paper.made();
      draw();
    }
    dim();
  }

  private int width() {
    Insets around = sheet.getInsets();
    int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
    int room = scroll.getWidth() - bar - around.left - around.right - Look.px(32);
    return Math.max(Look.px(NARROWEST) / 2, Math.min(Look.px(WIDEST), room));
  }

  private void draw() {
    if (shown.isEmpty() || scroll.getWidth() == 0) {
      return;
    }
    byte[] pdf = shown.get().pdf();
    int wanted = width();
    drawnWidth = wanted;
    tasks.run(
        Lane.BENCH_PAGE,
        "Drawing the paper",
        progress -> ReportPages.all(pdf, wanted, progress),
        this::pages,
        why -> {
          pages(List.of());
          empty.setText("The pages can't be drawn; the paper can be saved.");
        });
  }

  private void pages(List<BufferedImage> images) {
    int at = scroll.getVerticalScrollBar().getValue();
    sheet.removeAll();
    if (images.isEmpty()) {
      empty.setText(EMPTY);
      sheet.add(empty, "wmin 0");
    }
    for (int number = 0; number < images.size(); number++) {
      PageView view = new PageView(new Dimension(0, 0));
      view.getAccessibleContext()
          .setAccessibleName("Page " + (number + 1) + " of " + images.size());
      view.setBorder(BorderFactory.createEmptyBorder());
      view.show(images.get(number));
      sheet.add(view, "wmin 0");
    }
    dim();
    sheet.revalidate();
    sheet.repaint();
    scroll.validate();
    scroll.getVerticalScrollBar().setValue(at);
  }

  private void dim() {
    for (Component part : sheet.getComponents()) {
      if (part instanceof PageView view) {
        view.dim(dimmed);
      }
    }
  }
}
