package org.rimebook.desk.scatter;

import java.util.ArrayList;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.model.against.Asked;
import org.rimebook.station.Wire;

/**
 * What is shown: all or what is in view, which pair, and which view where there is room for one.
 */
final class Controls extends JPanel {

  static final String BY_HOUR = "Departure by hour";

  private static final List<String> VIEWS =
      List.of(ScatterScene.Kind.CURVE.words(), ScatterScene.Kind.PAIR.words(), BY_HOUR);

  private final JCheckBox inView = new JCheckBox("Only what is in view");
  private final JComboBox<String> pair = new JComboBox<>();
  private final List<JToggleButton> views = new ArrayList<>();
  private final List<Asked.Pair> pairs = new ArrayList<>();
  private final JPanel oneOf = new JPanel(new MigLayout("insets 0, gap 4"));
  private final Runnable changed;
  private List<Wire> wires = List.of();
  private boolean filling;

  /**
   * @param changed told when something else is to be shown
   */
  Controls(Runnable changed) {
    super(new MigLayout("insets 0, gap 8, hidemode 3"));
    oneOf.setOpaque(false);
    oneOf.setVisible(false);
    this.changed = changed;
    setOpaque(false);
    inView.setToolTipText("Show the readings of the stretch of time on screen, or of the season");
    inView.addActionListener(event -> changed.run());
    pair.getAccessibleContext().setAccessibleName("Wires set against each other");
    pair.setToolTipText("Which wire's departure from which other is shown");
    pair.addActionListener(event -> tell());
    ButtonGroup group = new ButtonGroup();
    for (String name : VIEWS) {
      JToggleButton button = new JToggleButton(name);
      button.addActionListener(event -> changed.run());
      group.add(button);
      views.add(button);
      oneOf.add(button);
    }
    add(oneOf, "spanx, wmin 0, wrap");
    views.get(0).setSelected(true);
    add(inView);
    add(pair);
  }

  private void tell() {
    if (!filling) {
      changed.run();
    }
  }

  /** Offers the pairs of some wires; the choice stays when they are the same wires as before. */
  void offer(List<Wire> offered) {
    if (offered.equals(wires)) {
      return;
    }
    wires = offered;
    filling = true;
    pair.removeAllItems();
    pairs.clear();
    for (int one = 0; one < wires.size(); one++) {
      for (int other = one + 1; other < wires.size(); other++) {
        pairs.add(new Asked.Pair(one, other));
        pair.addItem(wires.get(one).name() + " less " + wires.get(other).name());
      }
    }
    pair.setVisible(!pairs.isEmpty());
    filling = false;
  }

  /** Shows or hides the choice of one view. */
  void offerViews(boolean offered) {
    oneOf.setVisible(offered);
  }

  /** Number of the view to show where there is room for one only. */
  int view() {
    int number = 0;
    while (!views.get(number).isSelected()) {
      number++;
    }
    return number;
  }

  void view(int number) {
    views.get(number).setSelected(true);
    changed.run();
  }

  boolean inViewOnly() {
    return inView.isSelected();
  }

  void toggleInView() {
    inView.setSelected(!inView.isSelected());
    changed.run();
  }

  /** The pair chosen; the first wire twice when there is no pair. */
  Asked.Pair pair() {
    int index = pair.getSelectedIndex();
    return index < 0 ? new Asked.Pair(0, 0) : pairs.get(index);
  }

  boolean hasPairs() {
    return pairs.size() > 1;
  }

  void nextPair() {
    pair.setSelectedIndex((pair.getSelectedIndex() + 1) % pairs.size());
  }
}
