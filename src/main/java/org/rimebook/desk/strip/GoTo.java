package org.rimebook.desk.strip;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.rimebook.desk.model.TimeView;
import org.rimebook.station.Interval;

/** The field to go to a date: a month or day is shown whole, an hour or minute in the middle. */
final class GoTo extends InPlace {

  private static final long DAY_MS = 86_400_000;

  private final transient TimeView view;
  private final JTextField date = new JTextField(16);
  private final JLabel fault = new JLabel();

  GoTo(TimeView view, StripStack stack) {
    super(stack, "[][grow]");
    this.view = view;
    JLabel label = new JLabel("Go to");
    label.setLabelFor(date);
    date.getAccessibleContext().setAccessibleName("Date to go to");
    date.putClientProperty("JTextField.placeholderText", "2025-01-15 06:30");
    date.addActionListener(entered -> go());
    fault.getAccessibleContext().setAccessibleName("What is wrong with the date");
    add(label);
    add(date, "growx, wrap");
    add(fault, "span, hidemode 3, width 0:400:");
    fault.setVisible(false);
  }

  @Override
  void begin() {
    tell("");
    date.selectAll();
    date.requestFocusInWindow();
  }

  /** The field. */
  JTextField date() {
    return date;
  }

  /** What is wrong with what was written; empty when nothing is. */
  String fault() {
    return fault.getText();
  }

  private void go() {
    String words = date.getText();
    Optional<Interval> named = DateWords.read(words, stack().offset());
    if (named.isEmpty()) {
      tell("That is no date. Write 2025-01-15, or with the hour 2025-01-15 06:30.");
      return;
    }
    if (!named.get().overlaps(view.whole())) {
      tell(
          "The record goes from "
              + day(view.whole().fromMs())
              + " to "
              + day(view.whole().toMs())
              + ".");
      return;
    }
    tell("");
    view.go(around(named.get()));
    away();
  }

  private Interval around(Interval named) {
    if (named.lengthMs() >= DAY_MS) {
      return named;
    }
    long lengthMs = Math.min(DAY_MS, view.visible().get().lengthMs());
    long fromMs = named.fromMs() + named.lengthMs() / 2 - lengthMs / 2;
    return new Interval(fromMs, fromMs + lengthMs);
  }

  private LocalDate day(long epochMs) {
    return Instant.ofEpochMilli(epochMs).atOffset(stack().offset()).toLocalDate();
  }

  private void tell(String words) {
    fault.setText(words);
    fault.setVisible(!words.isEmpty());
    stack().revalidate();
  }
}
