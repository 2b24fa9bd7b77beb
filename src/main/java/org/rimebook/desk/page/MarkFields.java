package org.rimebook.desk.page;

import java.awt.Component;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.MarkForm;
import org.rimebook.desk.model.MarkForm.Field;
import org.rimebook.desk.model.MarkKind;
import org.rimebook.desk.model.Marking;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.VisitAction;

/** The fields of one form, checked as they are typed into. */
final class MarkFields {

  private final MarkForm form;
  private final Marking.Purpose purpose;
  private final Runnable changed;
  private final Map<Field, JTextField> texts = new EnumMap<>(Field.class);
  private final List<JComponent> parts = new ArrayList<>();
  private Optional<JComponent> first = Optional.empty();

  /**
   * @param task the form
   * @param changed told of each change
   * @param write told of Enter in the choice of reasons, which would keep it to itself
   */
  MarkFields(Marking.Task task, Runnable changed, Runnable write) {
    this.form = task.form();
    this.purpose = task.purpose();
    this.changed = changed;
    if (form.kind() == MarkKind.BAD_INTERVAL) {
      reasons(write);
    } else if (form.kind() == MarkKind.SERVICE_VISIT) {
      actions();
    }
    form.fields().forEach(this::field);
    check();
  }

  /** The components in their order. */
  List<JComponent> parts() {
    return List.copyOf(parts);
  }

  /** Where typing starts: the first field that is wrong, else the first there is. */
  JComponent first() {
    Optional<JComponent> wrong =
        texts.keySet().stream()
            .filter(field -> form.fault(field).isPresent() && field != Field.INITIALS)
            .findFirst()
            .map(texts::get);
    return wrong.or(() -> first).orElseGet(() -> texts.values().iterator().next());
  }

  /** The field to mend first. */
  JComponent faulty() {
    return texts.keySet().stream()
        .filter(field -> form.fault(field).isPresent())
        .findFirst()
        .<JComponent>map(texts::get)
        .orElseGet(this::first);
  }

  /** What is wrong, by field, in words. */
  String faults() {
    StringBuilder words = new StringBuilder();
    for (Field field : form.fields()) {
      form.fault(field)
          .ifPresent(
              fault ->
                  words
                      .append(words.length() == 0 ? "" : "  \u00b7  ")
                      .append(label(field))
                      .append(": ")
                      .append(fault));
    }
    return words.toString();
  }

  private String label(Field field) {
    if (field == Field.NOTE && purpose == Marking.Purpose.DISMISSAL) {
      return "Reason";
    }
    return field == Field.NOTE && purpose == Marking.Purpose.WITHDRAWAL
        ? "Reason, if any"
        : capital(field.words());
  }

  private void field(Field field) {
    boolean figure = field == Field.ANTIFREEZE || field == Field.OIL || field == Field.TOTAL;
    JTextField text = new JTextField(form.text(field), columns(field));
    text.setHorizontalAlignment(figure ? JTextField.TRAILING : JTextField.LEADING);
    text.getAccessibleContext().setAccessibleName(label(field));
    text.setName(field.name());
    text.getDocument().addDocumentListener(new Typed(() -> type(field, text)));
    texts.put(field, text);
    parts.add(labelled(label(field), text));
  }

  private static int columns(Field field) {
    return switch (field) {
      case ANTIFREEZE, OIL, INITIALS -> 4;
      case TOTAL -> 6;
      case SOURCE -> 16;
      case NOTE -> 22;
    };
  }

  private void type(Field field, JTextField text) {
    form.type(field, text.getText());
    check();
    changed.run();
  }

  private void check() {
    texts.forEach(
        (field, text) -> {
          boolean wrong = form.fault(field).isPresent();
          text.putClientProperty("JComponent.outline", wrong ? "error" : null);
          text.setToolTipText(form.fault(field).orElse(null));
          text.getAccessibleContext().setAccessibleDescription(form.fault(field).orElse(""));
        });
  }

  private void actions() {
    Map<VisitAction, JCheckBox> boxes = new LinkedHashMap<>();
    for (VisitAction action : VisitAction.values()) {
      JCheckBox box = new JCheckBox(EntryWords.action(action), form.actions().contains(action));
      box.addActionListener(
          event -> {
            form.choose(action, box.isSelected());
            changed.run();
          });
      boxes.put(action, box);
    }
    parts.addAll(boxes.values());
    first = Optional.of(boxes.get(VisitAction.EMPTIED));
  }

  private void reasons(Runnable write) {
    JComboBox<BadReason> reasons = new JComboBox<>(BadReason.values());
    reasons.setSelectedItem(form.reason());
    reasons.setRenderer(new ReasonCell());
    reasons.setKeySelectionManager(
        (letter, model) -> {
          for (int i = 0; i < model.getSize(); i++) {
            if (((BadReason) model.getElementAt(i)).code().charAt(0) == letter) {
              return i;
            }
          }
          return -1;
        });
    reasons.getAccessibleContext().setAccessibleName("Reason");
    reasons.setName("REASON");
    reasons.addActionListener(
        event -> {
          form.choose((BadReason) reasons.getSelectedItem());
          changed.run();
        });
    Keys.bind(
        reasons,
        JComponent.WHEN_FOCUSED,
        KeyStroke.getKeyStroke("ENTER"),
        () -> {
          if (reasons.isPopupVisible()) {
            reasons.setPopupVisible(false);
          } else {
            write.run();
          }
        });
    first = Optional.of(reasons);
    parts.add(labelled("Reason", reasons));
  }

  /** A field and its label, which stay in one row. */
  private static JPanel labelled(String words, JComponent field) {
    JLabel label = new JLabel(words);
    label.setLabelFor(field);
    JPanel both = new JPanel(new MigLayout("insets 0, gap 4", "[][]", "[]"));
    both.setOpaque(false);
    both.add(label);
    both.add(field);
    return both;
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static final class ReasonCell extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String words = value instanceof BadReason reason ? EntryWords.reason(reason) : "";
      return super.getListCellRendererComponent(list, words, index, selected, focused);
    }
  }

  /** Runs at each change of a text. */
  record Typed(Runnable deed) implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent event) {
      deed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
      deed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
      deed.run();
    }
  }
}
