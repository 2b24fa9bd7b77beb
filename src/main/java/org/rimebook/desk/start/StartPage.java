package org.rimebook.desk.start;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.RecentList;
import org.rimebook.desk.model.RecentSeason;
import org.rimebook.desk.model.SampleSeason;

/** What is shown while no season is open: recent seasons, ways to open one, and the samples. */
final class StartPage extends JPanel {

  private final RecentSeasons recent;
  private final JPanel recentPlace =
      new JPanel(
          new MigLayout(
              "insets 0, wrap 1, hidemode 3, gapy 8", "[grow, fill, 0::]", "[grow, fill][]"));
  private final JLabel samplesIn = Words.label(" ", () -> Look.text(0.92), Look::muted);
  private final JButton forget = new JButton("Take off the list");
  private final JButton back = new JButton("Back to the season");
  private final JScrollPane scroll;
  private final JTextArea none =
      Words.text(
          "Seasons you open are listed here, the latest first. A season folder holds station.json"
              + " and, in records, the files of the logger. Open one, drop one, or begin with a"
              + " sample season.",
          () -> Look.text(1.08),
          Look::muted);

  /**
   * What the page asks for.
   *
   * @param open opens a recent season
   * @param forget takes a recent season off the list
   * @param sample opens a sample season, written first where it isn't there
   * @param samplesElsewhere asks where the samples are to be
   * @param back goes back to the season that is open
   */
  record Asking(
      Consumer<RecentSeason> open,
      Consumer<RecentSeason> forget,
      Consumer<SampleSeason> sample,
      Runnable samplesElsewhere,
      Runnable back) {}

  StartPage(Asking asking, List<DeskAction> ways) {
    super(
        new MigLayout(
            "insets 32 40 24 40, gapx 48, align center",
            "[grow, fill, 0::560][fill, 320::380]",
            "[grow, fill]"));
    recent = new RecentSeasons(asking.open(), asking.forget());
    scroll = new JScrollPane(recent);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    forget.setMnemonic('T');
    forget.addActionListener(
        event -> {
          if (recent.getSelectedValue() != null) {
            asking.forget().accept(recent.getSelectedValue().season());
          }
        });
    back.setMnemonic('B');
    back.addActionListener(event -> asking.back().run());
    back.setVisible(false);
    add(recentSide());
    add(Sheet.scrolling(otherSide(asking, ways)), "top, hmin 0");
  }

  private JPanel recentSide() {
    recentPlace.setOpaque(false);
    recentPlace.add(scroll);
    recentPlace.add(none, "wmin 0, wmax 460, top");
    JPanel side =
        new JPanel(
            new MigLayout("insets 0, wrap 1, gapy 8", "[grow, fill, 0::]", "[][grow, fill][]"));
    side.setOpaque(false);
    side.add(Words.label("Recent seasons", () -> Look.bold(1.4), Look::ink));
    side.add(recentPlace);
    JPanel ways = new JPanel(new MigLayout("insets 0, gapx 8, hidemode 3"));
    ways.setOpaque(false);
    ways.add(back);
    ways.add(forget);
    side.add(ways);
    return side;
  }

  private Sheet otherSide(Asking asking, List<DeskAction> ways) {
    Sheet side = new Sheet(new MigLayout("insets 0, wrap 1, gapy 8", "[grow, fill, 0::]"));
    side.add(Words.label("Open", () -> Look.bold(1.4), Look::ink));
    ways.forEach(way -> side.add(new JButton(way), "h 32!"));
    side.add(
        new DropHint(
            "Or drop it anywhere on this window",
            "A season folder opens. A file of the logger, or a folder of them, begins a new"
                + " season."),
        "gaptop 8");
    side.add(Words.label("Sample seasons", () -> Look.bold(1.4), Look::ink), "gaptop 24");
    side.add(
        Words.text(
            "Invented ones, to try things on. Each is written to disk when it is first opened.",
            () -> Look.text(1),
            Look::muted),
        "wmin 0");
    SampleSeason.ALL.forEach(sample -> side.add(row(sample, asking)));
    JButton elsewhere = new JButton("Change…");
    elsewhere.getAccessibleContext().setAccessibleName("Change where samples are written");
    elsewhere.addActionListener(event -> asking.samplesElsewhere().run());
    side.add(samplesIn, "split 2, wmin 0, growx, gaptop 4");
    side.add(elsewhere, "grow 0");
    return side;
  }

  private static JPanel row(SampleSeason sample, Asking asking) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gapx 16, gapy 0", "[grow, fill, 0::][]", "[][top]"));
    row.setOpaque(false);
    JButton open = new JButton("Write and open");
    open.getAccessibleContext().setAccessibleName("Write and open " + sample.title());
    open.addActionListener(event -> asking.sample().accept(sample));
    row.add(Words.label(sample.title(), () -> Look.bold(1), Look::ink));
    row.add(open, "spany 2, top, wrap");
    row.add(Words.text(sample.words(), () -> Look.text(0.92), Look::muted), "wmin 0");
    return row;
  }

  /** Shows the seasons that were open. */
  void show(RecentList list) {
    recent.show(list);
    boolean any = !list.seasons().isEmpty();
    scroll.setVisible(any);
    forget.setVisible(any);
    none.setVisible(!any);
    revalidate();
    repaint();
  }

  /** Says where sample seasons are written. */
  void samplesIn(Path folder) {
    samplesIn.setText("In " + folder);
    samplesIn.setToolTipText(folder.toString());
  }

  /** Offers the way back while a season is open. */
  void offerBack(boolean open) {
    back.setVisible(open);
  }

  /** Puts the focus on the recent seasons. */
  void focus() {
    recent.requestFocusInWindow();
  }
}
