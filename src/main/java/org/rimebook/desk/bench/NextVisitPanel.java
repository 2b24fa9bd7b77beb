package org.rimebook.desk.bench;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import org.rimebook.desk.form.Choice;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.NextVisitForm;
import org.rimebook.upkeep.Caution;

/** What the next visit is planned by. */
final class NextVisitPanel extends BenchPanel {

  private final transient NextVisitForm form;
  private final transient PouredPart poured;
  private final Choice<NextVisitForm.Paper> paper;
  private final JTextArea site;

  NextVisitPanel(NextVisitForm form) {
    this.form = form;
    paper =
        new Choice<>(
            "On paper",
            List.of(NextVisitForm.Paper.values()),
            NextVisitForm.Paper::words,
            form::paper);
    named("On paper", 'E', paper);
    poured = new PouredPart(this, form.poured());
    fields(form, BenchField.FIRST_ANTIFREEZE);
    heading("The winter to come");
    fields(form, BenchField.COLDEST, BenchField.MARGIN, BenchField.DAYS, BenchField.WET_RATE);
    heading("On the way");
    site = cautions();
    tell();
  }

  @Override
  void tell() {
    super.tell();
    poured.tell();
    paper.setSelectedItem(form.paper());
    caution(site, Caution.site());
  }

  @Override
  JComponent first() {
    return poured.first();
  }
}
