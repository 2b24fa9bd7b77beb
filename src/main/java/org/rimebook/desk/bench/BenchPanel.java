package org.rimebook.desk.bench;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.BenchForm;

/** The fields of one task, in the order they are filled in. */
abstract class BenchPanel extends Sheet {

  private final transient List<Bound> bound = new ArrayList<>();

  BenchPanel() {
    super(new MigLayout("insets 4 16 16 16, wrap 1, gapy 10, hidemode 3, fillx", "[grow, fill]"));
  }

  /** A field and what it is typed into. */
  private record Bound(BenchForm form, BenchField of, CheckedField field) {
    void tell() {
      field.setVisible(form.fields().contains(of));
      if (!field.field().getText().equals(form.text(of))) {
        field.field().setText(form.text(of));
      }
      field.wrong(form.fault(of).orElse(""));
    }
  }

  /** Shows the form as it stands, and what is wrong with it. */
  void tell() {
    bound.forEach(Bound::tell);
  }

  /** Where the focus goes first. */
  abstract JComponent first();

  /** Adds fields beside each other where there is room. */
  final Map<BenchField, CheckedField> fields(BenchForm form, BenchField... wanted) {
    Map<BenchField, CheckedField> made = new EnumMap<>(BenchField.class);
    JPanel grid = new JPanel(new FieldGrid());
    grid.setOpaque(false);
    for (BenchField of : wanted) {
      CheckedField field =
          new CheckedField(
              form.label(of), of.example(), form.text(of), text -> form.type(of, text));
      made.put(of, field);
      bound.add(new Bound(form, of, field));
      grid.add(field);
    }
    grid.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            grid.revalidate();
          }
        });
    add(grid, "wmin 0");
    return made;
  }

  /** Adds a choice under its name. */
  final void named(String name, char mnemonic, JComponent choice) {
    JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2", "[grow, fill]"));
    JLabel label = Words.label(name, () -> Look.text(0.92), Look::muted);
    label.setLabelFor(choice);
    label.setDisplayedMnemonic(mnemonic);
    panel.add(label);
    panel.add(choice, "wmin 0");
    panel.setOpaque(false);
    add(panel, "wmin 0");
  }

  /** Adds the name of what follows. */
  final void heading(String words) {
    add(Words.text(words, () -> Look.bold(1), Look::ink), "gaptop 4, wmin 0");
  }

  /** Adds words that say what can hurt; empty at first. */
  final JTextArea cautions() {
    JTextArea words = Words.text("", () -> Look.text(0.92), Look::muted);
    words.getAccessibleContext().setAccessibleName("Cautions");
    add(words, "wmin 0");
    return words;
  }

  static void caution(JTextArea where, List<String> cautions) {
    say(where, cautions.stream().map(c -> "Caution: " + c).collect(Collectors.joining("\n")));
  }

  static void say(JTextArea where, String words) {
    if (!where.getText().equals(words)) {
      where.setText(words);
    }
    where.setVisible(!words.isEmpty());
  }

  /** A box to tick with words that wrap. */
  static JPanel box(String words, boolean ticked, Consumer<Boolean> told) {
    JPanel row = new JPanel(new MigLayout("insets 0, gapx 8", "[][grow, fill]", "[top]"));
    JCheckBox box = new JCheckBox("", ticked);
    box.getAccessibleContext().setAccessibleName(words);
    box.addActionListener(event -> told.accept(box.isSelected()));
    JTextArea text = Words.text(words, () -> Look.text(1), Look::ink);
    text.addMouseListener(new Pressing(box));
    row.setOpaque(false);
    row.add(box);
    row.add(text, "wmin 0");
    return row;
  }

  /** Words beside a box that press it. */
  private static final class Pressing extends MouseAdapter {
    private final AbstractButton box;

    Pressing(AbstractButton box) {
      this.box = box;
    }

    @Override
    public void mouseClicked(MouseEvent event) {
      box.doClick();
    }
  }
}
