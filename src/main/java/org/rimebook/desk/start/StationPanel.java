package org.rimebook.desk.start;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.form.Choice;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.DraftCheck;
import org.rimebook.desk.model.NewSeason;
import org.rimebook.desk.model.StationField;
import org.rimebook.station.RecordLayout.TimeIs;
import org.rimebook.station.WindShield;

/** The fields of the station. */
final class StationPanel extends JPanel {

  private final Map<StationField, CheckedField> fields = new EnumMap<>(StationField.class);

  StationPanel(NewSeason season) {
    super(
        new MigLayout(
            "insets 0, wrap 3, gapx 16, gapy 8, hidemode 3",
            "[grow, fill, sg][grow, fill, sg][grow, fill, sg]",
            "[top]"));
    for (StationField field : StationField.values()) {
      CheckedField entry =
          new CheckedField(
              name(field),
              field.example(),
              season.draft().get().text(field),
              text -> season.draft().set(season.draft().get().with(field, text)));
      fields.put(field, entry);
    }
    lay(season);
    season.check().follow(this::say);
  }

  /** Puts the focus into the first field. */
  void focus() {
    fields.get(StationField.NAME).field().requestFocusInWindow();
  }

  private void lay(NewSeason season) {
    add(fields.get(StationField.NAME), "span 2");
    add(fields.get(StationField.UTC_OFFSET));
    add(fields.get(StationField.LATITUDE));
    add(fields.get(StationField.LONGITUDE));
    add(fields.get(StationField.ELEVATION));
    add(fields.get(StationField.ORIFICE));
    add(fields.get(StationField.CAPACITY));
    add(fields.get(StationField.RIM));
    Choice<WindShield> shield =
        new Choice<>(
            "Wind shield",
            List.of(WindShield.values()),
            StationPanel::words,
            chosen -> season.draft().set(season.draft().get().with(chosen)));
    shield.setSelectedItem(season.draft().get().shield());
    add(named("Wind shield", shield));
    add(fields.get(StationField.DAY_START));
    Choice<TimeIs> end =
        new Choice<>(
            "A time names",
            List.of(TimeIs.END, TimeIs.START),
            time -> time == TimeIs.END ? "the end of its interval" : "the start of its interval",
            chosen -> season.draft().set(season.draft().get().with(chosen)));
    add(named("A time names", end));
    add(fields.get(StationField.GATE), "span 2");
  }

  private void say(DraftCheck check) {
    fields.forEach((field, entry) -> entry.wrong(check.station().getOrDefault(field, "")));
  }

  private static String name(StationField field) {
    if (field == StationField.GATE) {
      return field.label() + " (if wires are logged as counts)";
    }
    return field.required() ? field.label() : field.label() + " (if known)";
  }

  private static String words(WindShield shield) {
    return switch (shield) {
      case UNSHIELDED -> "none";
      case SINGLE_ALTER -> "single Alter";
      case OTHER -> "other or not known";
    };
  }

  private static JPanel named(String name, JComponent choice) {
    JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2", "[grow, fill]"));
    JLabel label = Words.label(name, () -> Look.text(0.92), Look::muted);
    label.setLabelFor(choice);
    panel.add(label);
    panel.add(choice, "wmin 0");
    panel.setOpaque(false);
    return panel;
  }
}
