package org.rimebook.desk.start;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.DraftCheck;
import org.rimebook.desk.model.NewSeason;
import org.rimebook.desk.model.SeasonDraft;
import org.rimebook.desk.model.SeasonSource;

/** The form of a new season: what the files show, what is to be entered, and what comes of it. */
final class NewSeasonPage extends JPanel {

  private final NewSeason season;
  private final SeasonDraft first;
  private final StationPanel station;
  private final JLabel folder = Words.label(" ", () -> Look.bold(1), Look::ink);
  private final JTextArea left = Words.text("", () -> Look.text(1), Look::ink);
  private final JButton make = new JButton("Make and open");

  /**
   * What the page asks for.
   *
   * @param make makes the season of a draft
   * @param folder asks for another folder, given the one now; returns what was chosen
   * @param cancel leaves the form
   */
  record Asking(Consumer<SeasonDraft> make, UnaryOperator<Path> folder, Runnable cancel) {}

  NewSeasonPage(SeasonSource source, Asking asking) {
    super(new MigLayout("insets 0, wrap 1, gap 0", "[grow, fill]", "[grow, fill][]"));
    season = new NewSeason(source);
    first = season.draft().get();
    station = new StationPanel(season);
    add(Sheet.scrolling(new Body(season, station)));
    add(foot(asking));
    season.draft().follow(draft -> folder.setText(draft.folder().toString()));
    season.check().follow(this::say);
  }

  NewSeason season() {
    return season;
  }

  /** Whether anything was entered. */
  boolean entered() {
    return !season.draft().get().equals(first);
  }

  /** Puts the focus where entering begins. */
  void focus() {
    station.focus();
  }

  /** Says why the season couldn't be made, at the foot. */
  void refuse(String words) {
    left.setText(words);
    revalidate();
  }

  private JPanel foot(Asking asking) {
    JPanel foot =
        new JPanel(
            new MigLayout("insets 8 24 16 24, gapx 8", "[][grow, fill, 80::]16[][][]", "[][]"));
    JButton choose = button("Change folder…", 'F', () -> chooseFolder(asking));
    JButton cancel = button("Cancel", 'C', asking.cancel());
    Runnable making = () -> asking.make().accept(season.draft().get());
    JButton draft = button("Keep as a draft", 'K', making);
    draft.setToolTipText("Makes the folder with a station sheet that marks what is left to enter");
    make.setMnemonic('M');
    make.addActionListener(event -> making.run());
    boolean copies = !first.source().copies().isEmpty();
    foot.add(
        Words.label(
            copies ? "The files are copied into" : "The station sheet is written into",
            () -> Look.text(1),
            Look::muted));
    foot.add(folder, "wmin 0");
    choose.setVisible(copies);
    foot.add(choose, "span, right, grow 0, wrap");
    left.getAccessibleContext().setAccessibleName("What is left to do");
    foot.add(left, "span 2, growx, wmin 0, gaptop 8");
    foot.add(cancel, "gaptop 8");
    foot.add(draft, "gaptop 8");
    foot.add(make, "gaptop 8");
    return foot;
  }

  private void chooseFolder(Asking asking) {
    SeasonDraft now = season.draft().get();
    season.draft().set(now.into(asking.folder().apply(now.folder())));
  }

  private static JButton button(String words, char mnemonic, Runnable deed) {
    JButton button = new JButton(words);
    button.setMnemonic(mnemonic);
    button.addActionListener(event -> deed.run());
    return button;
  }

  private void say(DraftCheck check) {
    make.setEnabled(check.complete());
    left.setText(
        switch (check.open()) {
          case 0 -> "Nothing is left to enter.";
          case 1 -> "One thing is left to enter or to mend.";
          default -> check.open() + " things are left to enter or to mend.";
        });
  }

  private static final class Body extends Sheet {

    Body(NewSeason season, StationPanel station) {
      super(
          new MigLayout(
              "insets 24 24 16 24, gapx 32",
              "[grow 55, fill, sg, 0::][grow 45, fill, sg, 0::]",
              "[top]"));
      SeasonSource source = season.draft().get().source();
      JPanel first = column();
      first.add(title("New season"));
      first.add(said(files(source)), "wmin 0");
      first.add(said("Written with " + source.preview().dialect() + "."), "wmin 0");
      first.add(new ColumnsPanel(season), "gaptop 12");
      first.add(heading("Station"), "gaptop 20");
      first.add(station);
      JPanel second = column();
      second.add(heading("Wires, from their calibration sheets"));
      second.add(new WiresPanel(season));
      second.add(new CurveChart(season), "gaptop 16, h 220::");
      ReadingsTable table = new ReadingsTable(season);
      second.add(table.getTableHeader(), "gaptop 8");
      second.add(table, "gaptop 0");
      add(first);
      add(second);
    }

    private static JPanel column() {
      return new JPanel(new MigLayout("insets 0, wrap 1, gapy 4", "[grow, fill, 0::]"));
    }

    private static String files(SeasonSource source) {
      int count = source.preview().files().size();
      String first = source.preview().files().get(0).replaceFirst("^records/", "");
      return count == 1 ? "From " + first + "." : "From " + count + " files, " + first + " first.";
    }

    private static JLabel title(String words) {
      return Words.label(words, () -> Look.bold(1.4), Look::ink);
    }

    private static JLabel heading(String words) {
      return Words.label(words, () -> Look.bold(1.1), Look::ink);
    }

    private static JTextArea said(String words) {
      return Words.text(words, () -> Look.text(1), Look::muted);
    }
  }
}
