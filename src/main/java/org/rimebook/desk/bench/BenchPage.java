package org.rimebook.desk.bench;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.Timer;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.SeenWhenFocused;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.bench.BenchForms;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.BenchPaper;
import org.rimebook.desk.model.bench.BenchTask;
import org.rimebook.desk.task.Tasks;

/** The bench as a page: its tasks, the form of the one chosen, and the paper made of it. */
public final class BenchPage extends JPanel {

  /** A paper is made so long after the last change [ms]. */
  private static final int PAUSE_MS = 300;

  /** Keys by which the strips are moved in and marked; they aren't to be reached from here. */
  private static final Set<Integer> OF_STRIPS =
      Set.of(
          KeyEvent.VK_LEFT,
          KeyEvent.VK_RIGHT,
          KeyEvent.VK_UP,
          KeyEvent.VK_DOWN,
          KeyEvent.VK_HOME,
          KeyEvent.VK_END,
          KeyEvent.VK_PAGE_UP,
          KeyEvent.VK_PAGE_DOWN);

  private final transient BenchModel model;
  private final JList<BenchTask> list = new JList<>(BenchTask.values());
  private final CardLayout cards = new CardLayout();
  private final JPanel deck = new JPanel(cards);
  private final transient Map<BenchTask, BenchPanel> panels = new EnumMap<>(BenchTask.class);
  private final JTextArea about = Words.text("", () -> Look.text(1), Look::muted);
  private final BenchFoot foot;
  private final PaperPane paper;
  private final JSplitPane split;
  private final Timer pause = new Timer(PAUSE_MS, event -> make());
  private transient Optional<BenchForms> built = Optional.empty();

  /**
   * @param model the bench
   * @param tasks draws pages and prints away from the event thread
   * @param told told what is to be said beside the paper, as that there is no printer
   */
  public BenchPage(BenchModel model, Tasks tasks, Consumer<String> told) {
    super(new BorderLayout());
    this.model = model;
    this.foot = new BenchFoot(this, model, new Printing(tasks, told));
    this.paper = new PaperPane(tasks);
    pause.setRepeats(false);
    split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, side(), paper);
    split.setBorder(BorderFactory.createEmptyBorder());
    split.setResizeWeight(0.3);
    add(tasksList(), BorderLayout.WEST);
    add(split);
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "close");
    getActionMap()
        .put(
            "close",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                model.close();
              }
            });
    model.task().watch(task -> turn());
    model.changes().watch(count -> tell());
    for (BenchTask task : BenchTask.values()) {
      model.paper(task).watch(made -> show(task, made));
    }
    model.shown().watch(shown -> pause.stop());
    turn();
    pause.restart();
  }

  /** What divides form and paper. */
  public JSplitPane split() {
    return split;
  }

  private Component tasksList() {
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.getAccessibleContext().setAccessibleName("Tasks of the bench");
    list.setCellRenderer(new Named());
    list.setOpaque(false);
    list.addListSelectionListener(
        event -> {
          if (list.getSelectedValue() != null && list.getSelectedValue() != model.task().get()) {
            model.choose(list.getSelectedValue());
          }
        });
    JPanel side = new JPanel(new MigLayout("insets 8 12 8 4", "[fill]"));
    side.add(list);
    return side;
  }

  private JPanel side() {
    JPanel side =
        new JPanel(new BorderLayout()) {
          @Override
          public Dimension getMinimumSize() {
            return new Dimension(Look.px(240), Look.px(120));
          }
        };
    JPanel top = new JPanel(new MigLayout("insets 12 16 4 16, fillx", "[grow, fill]"));
    about.getAccessibleContext().setAccessibleName("About the task");
    top.add(about, "wmin 0");
    side.add(top, BorderLayout.NORTH);
    side.add(deck);
    side.add(foot, BorderLayout.SOUTH);
    return side;
  }

  /** Shows the task chosen, its form as it was left. */
  private void turn() {
    if (!model.forms().equals(built)) {
      deck.removeAll();
      panels.clear();
      built = model.forms();
    }
    BenchTask task = model.task().get();
    list.setSelectedValue(task, true);
    about.setText(task.sentence() + ".");
    built.ifPresent(
        forms -> {
          panels.computeIfAbsent(task, wanted -> made(wanted, forms));
          cards.show(deck, task.name());
        });
    show(task, model.paper(task).get());
  }

  private BenchPanel made(BenchTask task, BenchForms forms) {
    BenchPanel panel =
        switch (task) {
          case CALIBRATION -> new CalibrationPanel(model, forms.calibration());
          case TEMPERATURE -> new TemperaturePanel(model, forms.temperature());
          case CHARGE -> new ChargePanel(forms.charge());
          case NEXT_VISIT -> new NextVisitPanel(forms.nextVisit());
          case INSTALLATION -> new InstallationPanel(model, forms.installation());
          case VISIT_DONE -> new VisitPanel(model, forms.visit());
        };
    SeenWhenFocused.watch(panel);
    JScrollPane scroll = Sheet.scrolling(panel);
    scroll.setMinimumSize(new Dimension(0, 0));
    deck.add(scroll, task.name());
    return panel;
  }

  /** Puts the focus to the tasks. */
  public void focus() {
    list.requestFocusInWindow();
  }

  private void tell() {
    if (!model.forms().equals(built)) {
      turn();
    }
    Optional.ofNullable(panels.get(model.task().get())).ifPresent(BenchPanel::tell);
    pause.restart();
  }

  private void make() {
    model.make();
  }

  private void show(BenchTask task, BenchPaper made) {
    if (task == model.task().get()) {
      paper.show(made);
      foot.show(task, made);
    }
  }

  /** Keys that mark and move in the strips go no further: the strips aren't to be seen. */
  @Override
  protected boolean processKeyBinding(
      KeyStroke stroke, KeyEvent event, int condition, boolean pressed) {
    return super.processKeyBinding(stroke, event, condition, pressed)
        || condition == WHEN_ANCESTOR_OF_FOCUSED_COMPONENT && isOfStrips(event);
  }

  private static boolean isOfStrips(KeyEvent event) {
    int commanding =
        InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;
    boolean plain = (event.getModifiersEx() & commanding) == 0;
    boolean text = event.getKeyChar() != KeyEvent.CHAR_UNDEFINED;
    boolean command =
        event.getKeyCode() == KeyEvent.VK_ENTER
            || event.getKeyCode() == KeyEvent.VK_TAB
            || event.getKeyCode() == KeyEvent.VK_ESCAPE;
    return OF_STRIPS.contains(event.getKeyCode())
        || plain && text && !command && !(event.getComponent() instanceof JTextComponent);
  }

  /** Tasks by their words, with room around them. */
  private static final class Named extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String words = ((BenchTask) value).words();
      super.getListCellRendererComponent(list, words, index, selected, focused);
      setBorder(BorderFactory.createEmptyBorder(Look.px(6), Look.px(8), Look.px(6), Look.px(12)));
      setOpaque(selected);
      setToolTipText(((BenchTask) value).sentence());
      return this;
    }
  }
}
