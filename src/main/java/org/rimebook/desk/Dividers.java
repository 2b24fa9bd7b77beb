package org.rimebook.desk;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicSplitPaneUI;
import org.rimebook.desk.model.Watched;

/** Keeps dividers where a hand left them, as shares of the length they divide. */
final class Dividers {

  private final Watched<Map<String, Double>> places;
  private final List<Divider> dividers = new ArrayList<>();

  Dividers(Watched<Map<String, Double>> places) {
    this.places = places;
    places.watch(known -> place());
  }

  /**
   * Keeps one.
   *
   * @param name what its place is remembered by
   * @param pane the pane it divides
   * @param first where it is when nothing is remembered
   */
  Dividers keep(String name, JSplitPane pane, double first) {
    Divider divider = new Divider(name, pane, first);
    dividers.add(divider);
    pane.addComponentListener(divider);
    pane.addPropertyChangeListener("UI", change -> divider.dressed());
    divider.listen();
    return this;
  }

  /** Puts all of them where they belong. */
  void place() {
    dividers.forEach(Divider::place);
  }

  /** One of them. */
  private final class Divider extends ComponentAdapter {
    private final String name;
    private final JSplitPane pane;
    private final double first;

    Divider(String name, JSplitPane pane, double first) {
      this.name = name;
      this.pane = pane;
      this.first = first;
    }

    /** Layout moves a divider as well; only a hand's move is remembered. */
    void listen() {
      ((BasicSplitPaneUI) pane.getUI())
          .getDivider()
          .addMouseListener(
              new MouseAdapter() {
                @Override
                public void mouseReleased(MouseEvent event) {
                  remember();
                }
              });
    }

    /** What both parts need is known once they have been dressed as well. */
    void dressed() {
      listen();
      SwingUtilities.invokeLater(this::place);
    }

    @Override
    public void componentResized(ComponentEvent event) {
      place();
    }

    void place() {
      int length = length();
      int wanted = within(places.get().getOrDefault(name, first), length);
      if (length > 0 && Math.abs(pane.getDividerLocation() - wanted) > 1) {
        pane.setDividerLocation(wanted);
      }
    }

    /** Leaves both parts at least what they need; where there isn't as much, their share of it. */
    private int within(double share, int length) {
      int before = least(pane.getLeftComponent());
      int after = least(pane.getRightComponent());
      if (before + after > length) {
        return (int) ((long) length * before / (before + after));
      }
      return (int) Math.max(before, Math.min(length - after, Math.round(share * length)));
    }

    private int least(Component part) {
      Dimension least = part.getMinimumSize();
      return upAndDown() ? least.height : least.width;
    }

    private void remember() {
      Map<String, Double> changed = new HashMap<>(places.get());
      changed.put(name, pane.getDividerLocation() / (double) Math.max(1, length()));
      places.set(Map.copyOf(changed));
    }

    private boolean upAndDown() {
      return pane.getOrientation() == JSplitPane.VERTICAL_SPLIT;
    }

    private int length() {
      return (upAndDown() ? pane.getHeight() : pane.getWidth()) - pane.getDividerSize();
    }
  }
}
