package org.rimebook.desk.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import org.rimebook.desk.form.Choice;
import org.rimebook.desk.model.bench.BenchField;
import org.rimebook.desk.model.bench.PouredForm;
import org.rimebook.upkeep.Antifreeze;

/** The part of a panel that asks which antifreeze and oil are used at the gauge. */
final class PouredPart {

  private final PouredForm form;
  private final Choice<Optional<Antifreeze>> antifreeze;
  private final JCheckBox memory = new JCheckBox("Use what is only remembered of it");
  private final JTextArea cautions;

  PouredPart(BenchPanel panel, PouredForm form) {
    this.form = form;
    List<Optional<Antifreeze>> liquids = new ArrayList<>();
    liquids.add(Optional.empty());
    Stream.of(Antifreeze.values()).map(Optional::of).forEach(liquids::add);
    antifreeze = new Choice<>("Antifreeze", liquids, PouredPart::words, form::antifreeze);
    memory.setMnemonic('U');
    memory.setOpaque(false);
    memory.setToolTipText("Its freezing points couldn't be checked against their source");
    memory.addActionListener(event -> form.fromMemory(memory.isSelected()));
    panel.named("Antifreeze", 'A', antifreeze);
    panel.add(memory);
    cautions = panel.cautions();
    panel.fields(form, BenchField.STRENGTH, BenchField.OIL_DENSITY);
  }

  private static String words(Optional<Antifreeze> liquid) {
    return liquid
        .map(l -> l.words() + (l.source().isEmpty() ? " (from memory)" : ""))
        .orElse("choose…");
  }

  JComponent first() {
    return antifreeze;
  }

  void tell() {
    antifreeze.setSelectedItem(form.antifreeze());
    memory.setVisible(form.asksForMemory());
    memory.setSelected(form.fromMemory());
    BenchPanel.caution(cautions, form.cautions());
  }
}
