package org.rimebook.desk.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.form.Choice;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.WrapRow;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.CalibrationForm;
import org.rimebook.desk.model.bench.CalibrationForm.Source;

/** Check weights, or a sheet, of one wire. */
final class CalibrationPanel extends BenchPanel {

  private final transient CalibrationForm form;
  private final transient BenchModel model;
  private final transient Map<BenchField, CheckedField> signed;
  private final Choice<String> wire;
  private final Choice<Source> source;
  private final LoadsTable table;
  private final JPanel weights =
      new JPanel(new MigLayout("insets 0, wrap 1, gapy 6, hidemode 3", "[grow, fill]"));
  private final JTextArea wrong = Words.text("", () -> Look.text(0.92), Look::ink);
  private final JTextArea cautions;

  CalibrationPanel(BenchModel model, CalibrationForm form) {
    this.model = model;
    this.form = form;
    wire = new Choice<>("Wire", form.wires(), name -> name, form::wire);
    source = new Choice<>("From", List.of(Source.values()), Source::words, form::source);
    table = new LoadsTable(form);
    named("Wire", 'W', wire);
    named("Calibrated by", 'Y', source);
    weights();
    add(weights, "wmin 0");
    cautions = cautions();
    fields(form, BenchField.WATER_DEG_C, BenchField.F0);
    fields(form, BenchField.SHEET_A, BenchField.SHEET_B, BenchField.SHEET_F0);
    heading("To store it");
    signed = fields(form, BenchField.VALID_FROM, BenchField.INITIALS);
    tell();
  }

  private void weights() {
    JScrollPane scroll = new JScrollPane(table);
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    JPanel buttons = new JPanel(new WrapRow());
    buttons.setOpaque(false);
    buttons.add(button("Add row", 'A', "A blank row at the end", table::addRow));
    buttons.add(button("Remove row", 'R', "Takes the rows chosen out", table::removeRows));
    buttons.add(
        button(
            "Paste",
            'E',
            "Two columns of a spreadsheet, from the row chosen on (Ctrl+V)",
            table::paste));
    wrong.getAccessibleContext().setAccessibleName("What is wrong with a row");
    weights.setOpaque(false);
    weights.add(
        Words.text(
            "Each weight with the frequency read under it; 0 is the empty bucket. Three or more"
                + " give a fit, one or two check the wire. Ctrl+Tab leaves the table.",
            () -> Look.text(0.92),
            Look::muted),
        "wmin 0");
    weights.add(scroll, "h 100:186:, wmin 0");
    weights.add(wrong, "wmin 0");
    weights.add(buttons, "wmin 0, pad 0 -8 0 0");
  }

  private static JButton button(String name, char mnemonic, String about, Runnable deed) {
    JButton button = new JButton(name);
    button.setMnemonic(mnemonic);
    button.setToolTipText(about);
    button.addActionListener(event -> deed.run());
    return button;
  }

  @Override
  void tell() {
    super.tell();
    signed.get(BenchField.INITIALS).setVisible(model.unsigned());
    wire.setSelectedItem(form.wire());
    source.setSelectedItem(form.source());
    weights.setVisible(form.source() != Source.SHEET);
    table.tell();
    Optional<String> fault = form.loads().firstFault();
    say(wrong, fault.orElse(""));
    caution(cautions, form.cautions());
  }

  @Override
  JComponent first() {
    return wire;
  }
}
