package org.rimebook.desk.start;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Choice;
import org.rimebook.desk.form.TextWatch;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.ColumnRole;
import org.rimebook.desk.model.ColumnUse;
import org.rimebook.desk.model.DraftCheck;
import org.rimebook.desk.model.NewSeason;
import org.rimebook.desk.model.SeasonDraft;
import org.rimebook.record.RecordPreview;
import org.rimebook.station.Unit;

/** The columns of the logger files with their first lines, and what is taken from each. */
final class ColumnsPanel extends JPanel {

  private static final int LINES = 3;

  private final NewSeason season;
  private final List<Row> rows = new ArrayList<>();
  private final JTextArea wrong = Words.text("", () -> Look.text(1), Look::ink);
  private boolean showing;

  ColumnsPanel(NewSeason season) {
    super(
        new MigLayout(
            "insets 0, wrap 5, gapx 12, gapy 4, hidemode 3",
            "[pref!][grow, fill, shrinkprio 200, 0::][pref!, fill][pref!, fill][pref!, fill]"));
    this.season = season;
    RecordPreview preview = season.draft().get().source().preview();
    head("Column");
    head("First lines");
    head("Holds");
    head("Unit");
    head("Height, m");
    for (int column = 0; column < preview.columns().size(); column++) {
      rows.add(new Row(column, preview));
    }
    add(wrong, "span, growx, wmin 0, gaptop 4");
    season.draft().follow(this::show);
    season.check().follow(this::say);
  }

  private void head(String words) {
    add(Words.label(words, () -> Look.text(0.92), Look::muted));
  }

  /** Shows a choice that was made elsewhere, too: there is one time only. */
  private void show(SeasonDraft draft) {
    showing = true;
    for (int column = 0; column < rows.size(); column++) {
      rows.get(column).show(draft.columns().get(column));
    }
    showing = false;
  }

  private void say(DraftCheck check) {
    List<String> all = new ArrayList<>(check.columns());
    all.addAll(check.sheet());
    wrong.setText(all.stream().map(words -> words + ".").collect(Collectors.joining("\n")));
    wrong.setVisible(!all.isEmpty());
  }

  private void choose(int column, ColumnUse use) {
    if (!showing && !use.equals(season.draft().get().columns().get(column))) {
      season.draft().set(season.draft().get().with(column, use));
    }
  }

  private static String firstLines(RecordPreview preview, int column) {
    return preview.rows().stream()
        .limit(LINES)
        .map(row -> column < row.size() && !row.get(column).isEmpty() ? row.get(column) : "–")
        .collect(Collectors.joining("   "));
  }

  private final class Row {
    private final int column;
    private final Choice<ColumnRole> role;
    private final JPanel unitPlace = place();
    private final JPanel heightPlace = place();
    private ColumnRole shown = ColumnRole.UNUSED;

    Row(int column, RecordPreview preview) {
      this.column = column;
      String name = preview.columns().get(column).name();
      role =
          new Choice<>(
              "Column " + name + " holds",
              List.of(ColumnRole.values()),
              ColumnRole::words,
              this::chosen);
      JLabel first = Words.label(firstLines(preview, column), () -> Look.text(0.92), Look::muted);
      first.setToolTipText(first.getText());
      add(Words.label(name, () -> Look.bold(1), Look::ink));
      add(first, "wmin 0");
      add(role);
      add(unitPlace, "h 22::");
      add(heightPlace);
    }

    private void chosen(ColumnRole chosen) {
      if (chosen != season.draft().get().columns().get(column).role()) {
        choose(column, ColumnUse.of(chosen));
      }
    }

    void show(ColumnUse use) {
      role.setSelectedItem(use.role());
      if (use.role() != shown) {
        shown = use.role();
        unitPlace.removeAll();
        heightPlace.removeAll();
        if (use.role().isChannel()) {
          unitPlace.add(unit(use));
        }
        if (use.takesHeight()) {
          heightPlace.add(height(use));
        }
        ColumnsPanel.this.revalidate();
        ColumnsPanel.this.repaint();
      }
    }

    private Choice<Unit> unit(ColumnUse use) {
      Choice<Unit> unit =
          new Choice<>(
              "Unit of column " + season.draft().get().columnName(column),
              use.role().units(),
              Unit::symbol,
              chosen -> choose(column, now().in(chosen)));
      unit.setSelectedItem(use.unit().orElseThrow());
      return unit;
    }

    private JTextField height(ColumnUse use) {
      JTextField height = new JTextField(use.heightText(), 4);
      height.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "10");
      height.getAccessibleContext().setAccessibleName("Height of the wind sensor, m");
      TextWatch.on(height, text -> choose(column, now().at(text)));
      return height;
    }

    private ColumnUse now() {
      return season.draft().get().columns().get(column);
    }

    private static JPanel place() {
      JPanel place = new JPanel(new MigLayout("insets 0", "[fill, grow]"));
      place.setOpaque(false);
      return place;
    }
  }
}
