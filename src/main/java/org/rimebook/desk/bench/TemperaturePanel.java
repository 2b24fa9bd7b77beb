package org.rimebook.desk.bench;

import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.form.Choice;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.TemperatureForm;
import org.rimebook.desk.model.bench.TemperatureForm.Source;

/** Which wires, and where their temperature coefficient comes from. */
final class TemperaturePanel extends BenchPanel {

  private final transient TemperatureForm form;
  private final transient BenchModel model;
  private final transient Map<BenchField, CheckedField> signed;
  private final Choice<String> wire;
  private final Choice<Source> source;

  TemperaturePanel(BenchModel model, TemperatureForm form) {
    this.model = model;
    this.form = form;
    wire = new Choice<>("Wire", form.choices(), name -> name, form::wire);
    source = new Choice<>("Coefficient", List.of(Source.values()), Source::words, form::source);
    add(
        Words.text(
            "The paper has what the station sheet says now. Another choice counts once it is"
                + " stored.",
            () -> Look.text(0.92),
            Look::muted),
        "wmin 0");
    named("Wire", 'W', wire);
    named("Coefficient", 'E', source);
    fields(form, BenchField.PER_DEG_C);
    signed = fields(form, BenchField.INITIALS);
    tell();
  }

  @Override
  void tell() {
    super.tell();
    signed.get(BenchField.INITIALS).setVisible(model.unsigned());
    wire.setSelectedItem(form.wire());
    source.setSelectedItem(form.source());
  }

  @Override
  JComponent first() {
    return wire;
  }
}
