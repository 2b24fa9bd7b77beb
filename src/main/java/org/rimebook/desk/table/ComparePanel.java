package org.rimebook.desk.table;

import static org.rimebook.station.Words.counted;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.TransferHandler;
import javax.swing.filechooser.FileNameExtensionFilter;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.CompareModel;
import org.rimebook.desk.model.Drawer;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.ShortTime;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.notebook.EntryDifference;
import org.rimebook.totals.DayDifference;

/** Two notebooks of one season side by side: mine and the reviewer's. */
public final class ComparePanel extends JPanel {

  private static final int PARTS = 100;
  private static final String NOTHING =
      "Drop another notebook.jsonl of this season here, or choose one, to see which entries and"
          + " which daily totals differ from yours.";

  private final Workspace workspace;
  private final CompareModel model;
  private final JLabel summary = Words.label("", () -> Look.text(1), Look::ink);
  private final JProgressBar bar = new JProgressBar(0, PARTS);
  private final JButton cancel = new JButton("Cancel");
  private final JButton close = new JButton("Put away");
  private final JButton takeOver = new JButton("Take over theirs");
  private final JPanel body = new JPanel(new CardLayout());
  private final DeskAction compare;
  private final PlainTable<EntryDifference> entries;
  private final PlainTable<DayDifference> days;

  /**
   * @param workspace the open season
   * @param keeper writes entries that are taken over
   * @param tasks computes the other totals away from the event thread
   */
  public ComparePanel(Workspace workspace, SeasonKeeper keeper, Tasks tasks) {
    super(new BorderLayout());
    this.workspace = workspace;
    this.model = new CompareModel(workspace, keeper, tasks);
    this.compare =
        DeskAction.named(Group.SEASON, "Compare with another notebook…", this::choose)
            .saying("Shows entries and daily totals that differ from another notebook's")
            .mnemonic('M')
            .when(() -> workspace.opened().get().isPresent())
            .done();
    workspace.opened().watch(opened -> compare.refresh());
    this.entries =
        new PlainTable<>(
            parts(),
            "The entries say the same",
            difference -> difference.span().ifPresent(model::show));
    this.days =
        new PlainTable<>(
            dayParts(), "The daily totals are the same", day -> model.show(day.mine().interval()));
    entries.getAccessibleContext().setAccessibleName("Entries that differ");
    days.getAccessibleContext().setAccessibleName("Daily totals that differ");
    entries.getSelectionModel().addListSelectionListener(event -> judge());
    add(head(), BorderLayout.NORTH);
    body.add(nothing(), "nothing");
    body.add(tables(), "tables");
    add(body, BorderLayout.CENTER);
    setTransferHandler(new Drop(this::open));
    tasks.watch(this::reached);
    model.comparison().follow(this::show);
  }

  /** Commands of the comparison. */
  public List<DeskAction> actions() {
    return List.of(compare);
  }

  private JPanel head() {
    JPanel head =
        new JPanel(
            new MigLayout("insets 4 8 4 8, gap 8, hidemode 3", "[][grow, fill, 0:0][][][][]"));
    JButton choose = new JButton("Choose a notebook…");
    choose.addActionListener(event -> choose());
    cancel.addActionListener(event -> model.cancel());
    close.addActionListener(event -> model.close());
    close.setToolTipText("Ends the comparison; nothing is written");
    takeOver.addActionListener(event -> entries.chosen().ifPresent(model::takeOver));
    takeOver.setToolTipText("Writes their entry into your notebook, keeping who wrote it");
    bar.setVisible(false);
    bar.getAccessibleContext().setAccessibleName("How far the comparison is");
    cancel.setVisible(false);
    head.add(choose);
    head.add(summary, "wmin 0");
    head.add(bar, "w 160!");
    head.add(cancel);
    head.add(takeOver);
    head.add(close);
    return head;
  }

  private static JPanel nothing() {
    JPanel panel = new JPanel(new MigLayout("insets 24 16 16 16", "[grow, fill, 0:0:560]"));
    panel.add(Prose.quiet(NOTHING));
    return panel;
  }

  private JPanel tables() {
    JPanel panel =
        new JPanel(
            new MigLayout(
                "insets 0, gap 16 0", "[grow 55, fill, 0:0][grow 45, fill, 0:0]", "[grow, fill]"));
    panel.add(scroll(entries));
    panel.add(scroll(days));
    return panel;
  }

  private static JScrollPane scroll(JComponent table) {
    JScrollPane scroll = new JScrollPane(table);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    return scroll;
  }

  private CompareText text() {
    ZoneOffset offset =
        workspace
            .opened()
            .get()
            .map(Opened::season)
            .map(season -> season.sheet().utcOffset())
            .orElse(ZoneOffset.UTC);
    return new CompareText(new ShortTime(offset), workspace.resolution().get());
  }

  private List<PlainTable.Part<EntryDifference>> parts() {
    return List.of(
        new PlainTable.Part<>("Time", 264, false, d -> text().span(d)),
        new PlainTable.Part<>("How they differ", 168, false, d -> d.kind().words()),
        new PlainTable.Part<>("Mine", 160, false, d -> text().side(d, d.mine())),
        new PlainTable.Part<>("Theirs", 160, false, d -> text().side(d, d.theirs())));
  }

  private List<PlainTable.Part<DayDifference>> dayParts() {
    return List.of(
        new PlainTable.Part<>(
            "Day", 100, true, d -> text().time().date(d.mine().interval().fromMs())),
        new PlainTable.Part<>("Mine mm", 80, true, d -> text().total(d.mine())),
        new PlainTable.Part<>("Theirs mm", 88, true, d -> text().total(d.theirs())),
        new PlainTable.Part<>("Theirs − mine mm", 136, true, d -> text().difference(d)),
        new PlainTable.Part<>("Quality", 120, false, d -> text().quality(d)));
  }

  private void choose() {
    workspace.drawer().set(Drawer.COMPARE);
    JFileChooser chooser =
        new JFileChooser(workspace.opened().get().map(o -> o.folder().toFile()).orElse(null));
    chooser.setDialogTitle("The other notebook of this season");
    chooser.setFileFilter(new FileNameExtensionFilter("Notebooks (*.jsonl)", "jsonl"));
    if (chooser.showDialog(this, "Compare") == JFileChooser.APPROVE_OPTION) {
      open(chooser.getSelectedFile().toPath());
    }
  }

  private void open(Path file) {
    workspace.drawer().set(Drawer.COMPARE);
    model.open(file);
  }

  private void reached(Tasks.Running running) {
    if (running.lane() == Lane.COMPARE) {
      bar.setVisible(!running.over());
      cancel.setVisible(!running.over());
      bar.setIndeterminate(running.share() < 0);
      bar.setValue((int) Math.round(PARTS * Math.max(0, running.share())));
    }
  }

  private void show(Optional<CompareModel.Comparison> comparison) {
    boolean there = comparison.isPresent();
    ((CardLayout) body.getLayout()).show(body, there ? "tables" : "nothing");
    close.setVisible(there);
    takeOver.setVisible(there);
    summary.setText(comparison.map(ComparePanel::words).orElse(""));
    summary.setToolTipText(comparison.map(c -> c.file().toString()).orElse(null));
    entries.show(comparison.map(CompareModel.Comparison::entries).orElse(List.of()));
    days.show(comparison.map(CompareModel.Comparison::days).orElse(List.of()));
    judge();
  }

  private static String words(CompareModel.Comparison comparison) {
    return "Mine "
        + comparison.mineWords()
        + " · theirs "
        + comparison.theirsWords()
        + " · "
        + counted(comparison.entries().size(), "entry")
        + " and "
        + counted(comparison.days().size(), "day")
        + (comparison.entries().size() + comparison.days().size() == 1 ? " differs" : " differ");
  }

  private void judge() {
    takeOver.setEnabled(entries.chosen().filter(CompareModel::canTakeOver).isPresent());
  }

  /** Takes a notebook dropped onto the panel. */
  private static final class Drop extends TransferHandler {
    private final transient Consumer<Path> taken;

    Drop(Consumer<Path> taken) {
      this.taken = taken;
    }

    @Override
    public boolean canImport(TransferSupport support) {
      return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
      try {
        Object dropped = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
        if (dropped instanceof List<?> files
            && files.size() == 1
            && files.get(0) instanceof File file) {
          taken.accept(file.toPath());
          return true;
        }
        return false;
      } catch (UnsupportedFlavorException | IOException e) {
        return false;
      }
    }
  }
}
