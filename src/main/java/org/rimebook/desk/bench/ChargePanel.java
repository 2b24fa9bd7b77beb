package org.rimebook.desk.bench;

import javax.swing.JComponent;
import org.rimebook.desk.model.bench.ChargeForm;

/** Which antifreeze and oil were poured in. */
final class ChargePanel extends BenchPanel {

  private final transient PouredPart poured;

  ChargePanel(ChargeForm form) {
    poured = new PouredPart(this, form.poured());
    tell();
  }

  @Override
  void tell() {
    super.tell();
    poured.tell();
  }

  @Override
  JComponent first() {
    return poured.first();
  }
}
