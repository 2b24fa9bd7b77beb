package org.rimebook.desk.start;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.DraftCheck;
import org.rimebook.desk.model.NewSeason;
import org.rimebook.desk.model.SeasonDraft;
import org.rimebook.desk.model.WireCheck;
import org.rimebook.desk.model.WireDraft;
import org.rimebook.desk.model.WireField;

/** The wires and their calibrations, a row for each column that is one. */
final class WiresPanel extends JPanel {

  private final NewSeason season;
  private final List<Row> rows = new ArrayList<>();
  private List<String> columns = List.of();

  WiresPanel(NewSeason season) {
    super(new MigLayout("insets 0, wrap 1, gapy 12, hidemode 3", "[grow, fill]"));
    this.season = season;
    season.draft().follow(this::hang);
    season.check().follow(this::say);
  }

  /** Rows stay while their columns do, so that typing isn't interrupted. */
  private void hang(SeasonDraft draft) {
    List<String> now = draft.wires().stream().map(WireDraft::column).toList();
    if (now.equals(columns) && getComponentCount() > 0) {
      return;
    }
    columns = now;
    rows.clear();
    removeAll();
    if (now.isEmpty()) {
      add(
          Words.text(
              "Choose above which columns are wires; their calibrations are entered here.",
              () -> Look.text(1),
              Look::muted),
          "wmin 0");
    }
    for (int wire = 0; wire < now.size(); wire++) {
      Row row = new Row(wire, draft.wires().get(wire));
      rows.add(row);
      add(row.panel);
    }
    say(season.check().get());
    revalidate();
    repaint();
  }

  private void say(DraftCheck check) {
    for (int wire = 0; wire < Math.min(rows.size(), check.wires().size()); wire++) {
      rows.get(wire).say(check.wires().get(wire));
    }
  }

  private void typed(int wire, WireField field, String text) {
    season.draft().set(season.draft().get().with(wire, field, text));
  }

  private final class Row {
    private final JPanel panel =
        new JPanel(
            new MigLayout(
                "insets 0, gapx 12, gapy 2, hidemode 3",
                "[fill, 40::, grow 140][fill, 40::, grow 80][fill, 40::, grow 110]"
                    + "[fill, 40::, grow 110][fill, 40::, grow 110]",
                "[][top][]"));
    private final Map<WireField, CheckedField> fields = new EnumMap<>(WireField.class);
    private final JTextArea said = Words.text("", () -> Look.text(0.92), Look::ink);

    Row(int wire, WireDraft draft) {
      panel.setOpaque(false);
      panel.add(new WireMark(wire, "Column " + draft.column()), "span, wrap, growx");
      for (WireField field : WireField.values()) {
        CheckedField entry =
            new CheckedField(
                field.label(),
                field.example(),
                draft.text(field),
                text -> typed(wire, field, text));
        entry
            .field()
            .getAccessibleContext()
            .setAccessibleName(field.label() + " of the wire in column " + draft.column());
        fields.put(field, entry);
        panel.add(entry, field == WireField.F0 ? "wrap" : "");
      }
      // its room is kept, so that what is beneath stays in place as one types
      said.setRows(2);
      said.getAccessibleContext().setAccessibleName("About this calibration");
      panel.add(said, "span, growx, wmin 0");
    }

    void say(WireCheck check) {
      fields.forEach((field, entry) -> entry.wrong(check.fields().getOrDefault(field, "")));
      List<String> words = new ArrayList<>();
      check.faults().forEach(fault -> words.add("Can't be used: " + fault + "."));
      check.alerts().forEach(alert -> words.add("Worth a look: " + alert + "."));
      said.setText(String.join("\n", words));
    }
  }
}
