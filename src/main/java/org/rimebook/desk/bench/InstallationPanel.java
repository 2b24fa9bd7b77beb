package org.rimebook.desk.bench;

import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.InstallationForm;

/** A time at rest, what to expect of it, and the steps of setting a gauge up. */
final class InstallationPanel extends BenchPanel {

  private final transient InstallationForm form;
  private final transient BenchModel model;
  private final transient Map<BenchField, CheckedField> times;
  private final transient Map<BenchField, CheckedField> signed;
  private final JTextArea site;

  InstallationPanel(BenchModel model, InstallationForm form) {
    this.model = model;
    this.form = form;
    times = fields(form, BenchField.FROM, BenchField.TO, BenchField.EXPECTED);
    heading("If the rim was tapped afterwards");
    fields(form, BenchField.TAPS_FROM, BenchField.TAPS_TO);
    heading("Steps");
    List<String> steps = form.steps();
    for (int step = 0; step < steps.size(); step++) {
      int number = step;
      add(
          box(steps.get(step), form.done(step), ticked -> form.done(number, ticked)),
          "wmin 0, gaptop 0");
    }
    site = cautions();
    signed = fields(form, BenchField.INITIALS);
    tell();
  }

  @Override
  void tell() {
    super.tell();
    signed.get(BenchField.INITIALS).setVisible(model.unsigned());
    caution(site, form.cautions());
  }

  @Override
  JComponent first() {
    return times.get(BenchField.FROM).field();
  }
}
