package org.rimebook.desk.page;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.DefaultListModel;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.text.Position;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.WrapRow;
import org.rimebook.desk.model.EntryHistory;
import org.rimebook.desk.model.EntryTimes;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.FindingsLeft;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.model.NotebookRow;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;
import org.rimebook.notebook.Entry;

/**
 * The notebook, read like a field notebook: by month, each entry with its time, kind, what it does,
 * words and initials. Choosing an entry goes there; Enter changes it.
 */
public final class NotebookPage extends JPanel {

  private static final String ALL = "all kinds";
  private static final String FINDINGS = "Findings";

  /** Of what is said of findings while none is under review. */
  private static final int CARD_HEIGHT = 32;

  private final transient FindingWalk walk;
  private final transient Marking marking;
  private final DefaultListModel<NotebookRow> rows = new DefaultListModel<>();
  private final JList<NotebookRow> list = new Sheet(rows);
  private final JTextField find = new JTextField();
  private final JComboBox<String> kinds = new JComboBox<>();
  private final JCheckBox withdrawn = new JCheckBox("withdrawn too");
  private final transient Map<String, String> codes = new LinkedHashMap<>();
  private String storied = "";
  private transient List<Finding> open = List.of();
  private boolean filling;

  /** Width at which the list is about to grow to the height of its rows; negative when it isn't. */
  private int growing = -1;

  /**
   * @param walk changes and withdraws entries, and decides on findings
   */
  public NotebookPage(FindingWalk walk) {
    super(new MigLayout("insets 8 0 0 0, wrap 1, fill", "[grow, fill, 0:0]", "[][][][grow, fill]"));
    this.walk = walk;
    this.marking = walk.marking();
    setName("notebook page");
    getAccessibleContext().setAccessibleName("Notebook");
    find.putClientProperty("JTextField.placeholderText", "Find");
    find.putClientProperty("JTextField.showClearButton", true);
    find.getAccessibleContext().setAccessibleName("Find in the notebook");
    kinds.getAccessibleContext().setAccessibleName("Kind of entry");
    withdrawn.setToolTipText("Show entries that no longer count, struck through");
    withdrawn.setOpaque(false);
    prepareList();
    JScrollPane scroll = new JScrollPane(list);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    JPanel choices = new JPanel(new WrapRow());
    choices.setOpaque(false);
    choices.putClientProperty("migLayout.dynamicAspectRatio", true);
    choices.add(kinds);
    choices.add(withdrawn);
    add(Box.createVerticalStrut(Look.px(CARD_HEIGHT)));
    add(find, "gapleft 8, gapright 8, wmin 0");
    add(choices, "wmin 0");
    add(scroll, "wmin 0, hmin 0, push, grow");
    find.getDocument().addDocumentListener(new MarkFields.Typed(this::fill));
    kinds.addActionListener(event -> fill());
    withdrawn.addActionListener(event -> fill());
    marking.workspace().opened().watch(opened -> fill());
    marking.workspace().selection().watch(selection -> follow());
    marking.workspace().findings().watch(this::found);
    fill();
  }

  /** Puts in what is said of findings, for which there is only room at first. */
  public void furnish() {
    remove(0);
    add(new FindingCard(walk), "wmin 0, hmin pref, hidemode 3", 0);
    revalidate();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBackground(Look.paper());
  }

  private void prepareList() {
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new NotebookCell(this::history));
    list.getAccessibleContext().setAccessibleName("Entries and findings");
    list.addListSelectionListener(event -> choose());
    Keys.bind(list, WHEN_FOCUSED, KeyStroke.getKeyStroke("ENTER"), this::change);
    list.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            boolean keep = chosenInView() || list.getWidth() == growing;
            growing = keep && list.getWidth() != growing ? list.getWidth() : -1;
            measureAgain();
            if (keep) {
              list.ensureIndexIsVisible(list.getSelectedIndex());
            }
          }
        });
  }

  /** Shows the history of the entry chosen under it, or hides it again. */
  public void toggleHistory() {
    String chosen = entryChosen().map(entry -> entry.header().id()).orElse("");
    storied = storied.equals(chosen) ? "" : chosen;
    measureAgain();
    list.ensureIndexIsVisible(list.getSelectedIndex());
  }

  /** Shows entries that no longer count, or hides them again. */
  public void toggleWithdrawn() {
    withdrawn.doClick();
  }

  /** Puts the cursor where words to find are typed. */
  public void find() {
    find.requestFocusInWindow();
    find.selectAll();
  }

  /** The entry chosen on the page, whether or not it counts; else the one chosen elsewhere. */
  Optional<Entry> entryChosen() {
    return list.getSelectedValue() instanceof NotebookRow.Line line
        ? Optional.of(line.entry())
        : marking.chosen();
  }

  private List<String> history(Entry entry) {
    Optional<EntryTimes> times = marking.times();
    return entry.header().id().equals(storied) && times.isPresent()
        ? EntryHistory.of(marking.notebook(), storied, times.get())
        : List.of();
  }

  /** The list is filled anew only when other findings are left. */
  private void found(FindingsLeft left) {
    List<Finding> now = left.open().stream().sorted(Findings.BY_TIME).toList();
    if (now.equals(open)) {
      follow();
    } else {
      open = now;
      fill();
    }
  }

  private void fill() {
    if (filling) {
      return;
    }
    filling = true;
    offerKinds();
    String kind = codes.getOrDefault(String.valueOf(kinds.getSelectedItem()), "");
    NotebookRow.Filter filter =
        new NotebookRow.Filter(find.getText(), kind, withdrawn.isSelected());
    rows.clear();
    marking
        .times()
        .ifPresent(times -> rows.addAll(NotebookRow.of(marking.notebook(), open, filter, times)));
    filling = false;
    follow();
  }

  private void offerKinds() {
    Map<String, String> there = new LinkedHashMap<>();
    there.put(ALL, "");
    if (!open.isEmpty()) {
      there.put(FINDINGS, NotebookRow.Filter.FINDINGS);
    }
    for (Entry entry : marking.notebook().history()) {
      if (!(entry instanceof Entry.Withdrawal)) {
        there.put(EntryWords.kind(entry), entry.kind());
      }
    }
    if (!List.copyOf(there.keySet()).equals(List.copyOf(codes.keySet()))) {
      Object before = kinds.getSelectedItem();
      codes.clear();
      codes.putAll(there);
      kinds.removeAllItems();
      there.keySet().forEach(kinds::addItem);
      kinds.setSelectedItem(there.containsKey(String.valueOf(before)) ? before : ALL);
    }
  }

  /** Has the list show the entry chosen elsewhere. */
  private void follow() {
    if (filling) {
      return;
    }
    filling = true;
    String id = marking.workspace().selection().get().entry();
    int found = -1;
    for (int i = 0; i < rows.size(); i++) {
      NotebookRow row = rows.get(i);
      if (row instanceof NotebookRow.Line line && line.entry().header().id().equals(id)
          || row instanceof NotebookRow.Found here && walk.left().reviews(here.finding())) {
        found = i;
      }
    }
    if (found < 0) {
      list.clearSelection();
    } else if (found != list.getSelectedIndex()) {
      list.setSelectedIndex(found);
      reveal();
    }
    filling = false;
  }

  /** Brings the entry chosen into view, now and once the window is laid out with it. */
  private void reveal() {
    list.ensureIndexIsVisible(list.getSelectedIndex());
    SwingUtilities.invokeLater(
        () -> {
          validate();
          list.ensureIndexIsVisible(list.getSelectedIndex());
        });
  }

  private void choose() {
    if (filling) {
      return;
    }
    filling = true;
    if (list.getSelectedValue() instanceof NotebookRow.Line line) {
      marking.go(line.entry());
    } else if (list.getSelectedValue() instanceof NotebookRow.Found found) {
      walk.review(found.finding());
    }
    filling = false;
  }

  private void change() {
    if (walk.canDecide()) {
      walk.change();
      return;
    }
    entryChosen().flatMap(entry -> marking.entry(entry.header().id())).ifPresent(marking::change);
  }

  /** Whether any of the entry chosen is in view. */
  private boolean chosenInView() {
    int chosen = list.getSelectedIndex();
    return chosen >= 0 && list.getVisibleRect().intersects(list.getCellBounds(chosen, chosen));
  }

  /** Row heights depend on the width and on whether a history is shown. */
  private void measureAgain() {
    list.setFixedCellHeight(1);
    list.setFixedCellHeight(-1);
  }

  private String emptyWords() {
    boolean none = marking.notebook().history().isEmpty() && open.isEmpty();
    return none
        ? "Nothing is written yet. Drag across the strips to mark a time, or press R for a remark."
        : "No entry is like that. Clear the words or choose all kinds.";
  }

  /** The list on paper, with words where it is empty. */
  private final class Sheet extends JList<NotebookRow> {
    private static final long serialVersionUID = 1;

    Sheet(DefaultListModel<NotebookRow> model) {
      super(model);
    }

    /** Letters are keys of the window and don't look for a row. */
    @Override
    public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
      return -1;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      setBackground(Look.paper());
      super.paintComponent(graphics);
      if (getModel().getSize() == 0) {
        Graphics2D own = Ink.of(graphics);
        own.setColor(Look.muted());
        own.setFont(Look.text(1));
        int y = Look.px(16) + own.getFontMetrics().getAscent();
        for (String line :
            Ink.wrapped(emptyWords(), own.getFontMetrics(), getWidth() - Look.px(24))) {
          own.drawString(line, Look.px(12), y);
          y += own.getFontMetrics().getHeight();
        }
        own.dispose();
      }
    }
  }
}
