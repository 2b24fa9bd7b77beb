package org.rimebook.desk.bench;

import java.util.Map;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.VisitForm;
import org.rimebook.notebook.VisitAction;

/** What was written down at a visit. */
final class VisitPanel extends BenchPanel {

  private final transient VisitForm form;
  private final transient BenchModel model;
  private final transient Map<BenchField, CheckedField> times;
  private final transient Map<BenchField, CheckedField> signed;
  private final JTextArea cautions;

  VisitPanel(BenchModel model, VisitForm form) {
    this.model = model;
    this.form = form;
    times = fields(form, BenchField.ARRIVED, BenchField.LEFT);
    heading("Done");
    JPanel boxes = new JPanel(new FieldGrid());
    boxes.setOpaque(false);
    for (VisitAction action : VisitAction.values()) {
      boxes.add(box(action));
    }
    add(boxes, "wmin 0");
    fields(
        form,
        BenchField.ANTIFREEZE,
        BenchField.OIL,
        BenchField.LEVEL_BEFORE,
        BenchField.LEVEL_AFTER);
    cautions = cautions();
    fields(form, BenchField.REMARKS);
    signed = fields(form, BenchField.INITIALS);
    tell();
  }

  private JCheckBox box(VisitAction action) {
    JCheckBox box = new JCheckBox(EntryWords.action(action), form.done(action));
    box.setOpaque(false);
    box.addActionListener(event -> form.done(action, box.isSelected()));
    return box;
  }

  @Override
  void tell() {
    super.tell();
    signed.get(BenchField.INITIALS).setVisible(model.unsigned());
    caution(cautions, form.cautions());
  }

  @Override
  JComponent first() {
    return times.get(BenchField.ARRIVED).field();
  }
}
