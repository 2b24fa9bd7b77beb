package org.rimebook.desk.page;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.SeenWhenFocused;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.look.WrapRow;
import org.rimebook.desk.model.EntryTimes;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.MarkKind;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.model.Selection;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/**
 * A slim bar, there while something is selected or filled in: what is selected, the kinds it can be
 * marked as, and the fields of the form under way. Enter writes, Escape drops.
 */
public final class MarkBar extends JPanel {

  private static final String NOTHING = "nothing";
  private static final String INTERVALS = "intervals";

  private final transient Marking marking;
  private final JLabel span = Words.label("", () -> Look.bold(1), Look::ink);
  private final JPanel row = new JPanel(new WrapRow());
  private final JTextArea words = Words.text("", () -> Look.text(1), Look::muted);
  private final JPanel content =
      new Sheet(new MigLayout("insets 0, fillx, hidemode 3, gap 0", "[grow, fill]"));
  private transient Optional<MarkFields> fields = Optional.empty();
  private final transient Map<String, JCheckBox> wires = new LinkedHashMap<>();
  private transient Object shown = NOTHING;

  /**
   * @param marking what is marked
   */
  public MarkBar(Marking marking) {
    super(new BorderLayout());
    this.marking = marking;
    setName("mark bar");
    getAccessibleContext().setAccessibleName("Mark");
    row.setOpaque(false);
    content.add(row, "wmin 0, wrap");
    content.add(words, "wmin 0, gapleft 8, gapright 8, gapbottom 4");
    JScrollPane scroll = new JScrollPane(content);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    add(scroll);
    Keys.bind(
        this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, KeyStroke.getKeyStroke("ENTER"), this::write);
    row.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            row.revalidate();
            revalidate();
          }
        });
    marking.task().watch(task -> present());
    marking.workspace().selection().watch(selection -> present());
    marking.workspace().opened().watch(opened -> present());
    marking.workspace().findings().watch(left -> present());
    present();
  }

  /** As high as what is in it, but not more than two fifths of the window; then it scrolls. */
  @Override
  public Dimension getPreferredSize() {
    Dimension wanted = content.getPreferredSize();
    Component window = SwingUtilities.getRoot(this);
    int most = window == null ? wanted.height : Math.max(Look.px(64), window.getHeight() * 2 / 5);
    return new Dimension(wanted.width, Math.min(wanted.height, most));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }

  private void present() {
    Optional<Marking.Task> task = marking.task().get();
    Selection selection = marking.workspace().selection().get();
    Optional<Entry> chosen = marking.chosen();
    boolean reviewing = marking.workspace().findings().get().reviewed().isPresent();
    boolean something = task.isPresent() || !reviewing && isSelected(selection, chosen);
    setVisible(something && marking.times().isPresent());
    if (!isVisible()) {
      shown = NOTHING;
      clear();
      return;
    }
    Object wanted =
        task.<Object>map(Marking.Task::form)
            .orElseGet(() -> chosen.<Object>map(e -> e).orElse(INTERVALS));
    if (!wanted.equals(shown)) {
      shown = wanted;
      rebuild(task, chosen);
    }
    wires.forEach((name, box) -> box.setSelected(selection.wires().contains(name)));
    span.setText(spanWords(task, chosen));
    tell();
  }

  private static boolean isSelected(Selection selection, Optional<Entry> chosen) {
    return chosen.isPresent() || !selection.intervals().isEmpty() || !selection.wires().isEmpty();
  }

  private void rebuild(Optional<Marking.Task> task, Optional<Entry> chosen) {
    clear();
    wires.clear();
    fields = Optional.empty();
    if (task.isPresent()) {
      form(task.get());
    } else if (chosen.isPresent()) {
      entry(chosen.get());
    } else {
      wires();
      for (MarkKind kind : MarkKind.values()) {
        row.add(button(kind.words(), String.valueOf(kind.key()), kind.effect(), start(kind)));
      }
    }
    SeenWhenFocused.watch(row);
    row.revalidate();
    row.repaint();
    fields.map(MarkFields::first).ifPresent(JComponent::requestFocusInWindow);
  }

  /** The title stays, as only what is in the window follows its size and theme. */
  private void clear() {
    row.removeAll();
    row.add(span);
  }

  private Runnable start(MarkKind kind) {
    return () -> marking.start(kind);
  }

  private void form(Marking.Task task) {
    if (task.purpose().marks() && task.form().kind() == MarkKind.BAD_INTERVAL) {
      wires();
    }
    MarkFields made = new MarkFields(task, this::changed, this::write);
    fields = Optional.of(made);
    OpeningKey.swallow(
        EventQueue.getCurrentEvent(), KeyboardFocusManager.getCurrentKeyboardFocusManager());
    made.parts().forEach(row::add);
    String deed =
        switch (task.purpose()) {
          case NEW, CHANGE, PROPOSAL -> "Write";
          case ACCEPTANCE -> "Accept";
          case DISMISSAL -> "Dismiss";
          case WITHDRAWAL -> "Withdraw";
          case UNDO -> "Undo";
          case REDO -> "Redo";
        };
    row.add(button(deed, "Enter", "Puts it into the notebook", this::write));
    row.add(button("Drop", "Esc", "Leaves the notebook as it is", marking::drop));
  }

  private void entry(Entry entry) {
    if (MarkKind.of(entry).isPresent()) {
      row.add(button("Change", "F2", "Opens its fields", () -> marking.change(entry)));
    }
    row.add(button("Withdraw", "Del", "It no longer counts", () -> marking.askWithdrawal(entry)));
  }

  private void wires() {
    List<String> names = marking.wires();
    for (String name : names.size() > 1 ? names : List.<String>of()) {
      JCheckBox box = new JCheckBox(name);
      box.setToolTipText("Mark this wire; with none chosen, all are meant");
      box.getAccessibleContext().setAccessibleName("Wire " + name);
      box.addActionListener(event -> toggle(name, box));
      wires.put(name, box);
      row.add(box);
    }
  }

  private void toggle(String name, JCheckBox box) {
    Selection now = marking.workspace().selection().get();
    if (now.wires().contains(name) != box.isSelected()) {
      marking.workspace().selection().set(now.toggled(name));
    }
  }

  static JButton button(String name, String key, String effect, Runnable deed) {
    JButton button = new JButton(name);
    button.setToolTipText(effect + " (" + key + ")");
    button.getAccessibleContext().setAccessibleName(name);
    button.getAccessibleContext().setAccessibleDescription(effect + ", key " + key);
    button.addActionListener(event -> deed.run());
    Keys.bind(button, WHEN_FOCUSED, KeyStroke.getKeyStroke("ENTER"), button::doClick);
    KeyName.after(button, key);
    return button;
  }

  private void changed() {
    marking.changed();
    tell();
  }

  private void write() {
    if (marking.task().get().isPresent() && !marking.write()) {
      fields.map(MarkFields::faulty).ifPresent(JComponent::requestFocusInWindow);
    }
  }

  private void tell() {
    List<String> lines = new ArrayList<>();
    marking
        .task()
        .get()
        .ifPresent(
            task -> {
              fields.map(MarkFields::faults).filter(s -> !s.isEmpty()).ifPresent(lines::add);
              lines.addAll(task.form().cautions());
            });
    if (marking.task().get().isEmpty()) {
      marking.chosen().map(MarkBar::said).filter(s -> !s.isEmpty()).ifPresent(lines::add);
    }
    String text = String.join("\n", lines);
    words.setVisible(!text.isEmpty());
    if (!words.getText().equals(text)) {
      words.setText(text);
      revalidate();
    }
  }

  private static String said(Entry entry) {
    String more = EntryWords.particulars(entry);
    String note = entry.header().note();
    return more + (more.isEmpty() || note.isEmpty() ? "" : ". ") + note;
  }

  private String spanWords(Optional<Marking.Task> task, Optional<Entry> chosen) {
    EntryTimes times = marking.times().orElseThrow();
    List<Interval> spans =
        task.map(Marking.Task::spans)
            .orElseGet(() -> marking.workspace().selection().get().intervals());
    String what = task.map(this::title).orElseGet(() -> chosen.map(EntryWords::kind).orElse(""));
    String when = when(spans, times);
    return what + (what.isEmpty() || when.isEmpty() ? "" : ", ") + when;
  }

  private String title(Marking.Task task) {
    String kind = task.form().kind().words();
    return switch (task.purpose()) {
      case NEW -> kind;
      case CHANGE -> "Change of " + kind.toLowerCase(Locale.ROOT);
      case WITHDRAWAL ->
          "Withdrawal of "
              + marking.entry(task.id()).map(EntryWords::kind).orElse("").toLowerCase(Locale.ROOT);
      case PROPOSAL -> "Instead of what is proposed: " + kind.toLowerCase(Locale.ROOT);
      case ACCEPTANCE -> "Acceptance" + reviewed();
      case DISMISSAL -> "Dismissal" + reviewed();
      case UNDO -> "Who undoes it?";
      case REDO -> "Who does it again?";
    };
  }

  private String reviewed() {
    return marking
        .workspace()
        .findings()
        .get()
        .reviewed()
        .map(finding -> " of \u201c" + finding.kind().words() + "\u201d")
        .orElse("");
  }

  private static String when(List<Interval> spans, EntryTimes times) {
    if (spans.isEmpty()) {
      return "";
    }
    long lengthMs = spans.stream().mapToLong(Interval::lengthMs).sum();
    String length = " (" + EntryTimes.length(lengthMs) + ")";
    return spans.size() == 1
        ? times.span(spans.get(0)) + length
        : spans.size() + " intervals from " + times.dayAndTime(spans.get(0).fromMs()) + length;
  }
}
