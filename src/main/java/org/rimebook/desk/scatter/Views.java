package org.rimebook.desk.scatter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.model.against.AgainstPicture;
import org.rimebook.desk.model.against.AgainstWords;
import org.rimebook.desk.model.against.Asked;

/** The three views side by side, or one of them, each with a line of words under it. */
final class Views extends JPanel {

  private final ScatterPlot curve = new ScatterPlot(ScatterScene.Kind.CURVE);
  private final ScatterPlot pair = new ScatterPlot(ScatterScene.Kind.PAIR);
  private final HourPlot hours = new HourPlot();
  private final List<JComponent> plots = List.of(curve, pair, hours);
  private final List<JLabel> lines = List.of(line(), line(), line());
  private final List<JPanel> boxes = new ArrayList<>();
  private Optional<AgainstPicture> picture = Optional.empty();

  Views() {
    super(new MigLayout("insets 0, gap 8, fill, hidemode 3", "", "[grow]"));
    for (int i = 0; i < plots.size(); i++) {
      boxes.add(box(plots.get(i), lines.get(i)));
      add(boxes.get(i), "grow, push, sizegroupx views, wmin 0, hmin 0");
    }
    showNothing();
  }

  private static JLabel line() {
    JLabel label = new JLabel(" ");
    label.putClientProperty("FlatLaf.styleClass", "small");
    return label;
  }

  private static JPanel box(JComponent plot, JLabel line) {
    JPanel box = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow]", "[grow][]"));
    box.add(plot, "grow, push, wrap, wmin 0, hmin 0");
    box.add(line, "growx, wmin 0, gapleft 8, gapright 8, gapbottom 2");
    return box;
  }

  ScatterPlot curve() {
    return curve;
  }

  ScatterPlot pair() {
    return pair;
  }

  HourPlot hours() {
    return hours;
  }

  /** Shows all three, or one by its number. */
  void arrange(boolean all, int one) {
    for (int i = 0; i < boxes.size(); i++) {
      boxes.get(i).setVisible(all || i == one);
    }
    revalidate();
  }

  void focus(int number) {
    plots.get(number).requestFocusInWindow();
  }

  /** Cells there is room for on the two scatters. */
  Asked.Room room() {
    return new Asked.Room(curve.room(), pair.room());
  }

  /** What is shown; empty when nothing is. */
  Optional<AgainstPicture> picture() {
    return picture;
  }

  void showNothing() {
    picture = Optional.empty();
    curve.showNothing("The readings against each other stand here once a season is open.");
    pair.showNothing("");
    hours.showNothing("");
    lines.forEach(label -> label.setText(" "));
  }

  void show(AgainstPicture made) {
    picture = Optional.of(made);
    curve.show(new ScatterScene(made, made.curve(), ScatterScene.Kind.CURVE));
    made.pair()
        .ifPresentOrElse(
            scatter -> pair.show(new ScatterScene(made, scatter, ScatterScene.Kind.PAIR)),
            () ->
                pair.showNothing("Two wires are set against each other here; this gauge has one."));
    if (made.sun().filter(sun -> !sun.days().isEmpty()).isPresent()) {
      hours.show(made);
    } else {
      hours.showNothing(whyNoSun(made));
    }
    summarise();
  }

  private static String whyNoSun(AgainstPicture made) {
    if (made.readings().wires().size() < 2) {
      return "Each wire's departure from the mean of all stands here; this gauge has one wire.";
    }
    return made.sun().isEmpty()
        ? "Waits for the catch, which tells the dry days."
        : "No day here is dry from midnight to midnight with readings of all wires in every hour."
            + " Show the whole season, or look further.";
  }

  /** Lets wires stand out; all when none is named. */
  void choose(Set<String> wires) {
    curve.choose(wires);
    pair.choose(wires);
    hours.choose(wires);
  }

  /** Marks the readings of a row of the record; −1 marks none. */
  void mark(int row) {
    curve.mark(row);
    pair.mark(row);
  }

  /** Says something of what is pointed at in a view. */
  void say(JComponent plot, String words) {
    lines.get(plots.indexOf(plot)).setText(words);
  }

  /** Says what each view comes to. */
  void summarise() {
    picture.ifPresent(
        shown -> {
          AgainstWords words = new AgainstWords(shown.readings());
          say(curve, words.furthestOff(shown.curve()) + " ");
          say(pair, shown.pair().map(words::furthestOff).orElse("") + " ");
          say(hours, shown.sun().map(words::summary).orElse("") + " ");
        });
  }
}
