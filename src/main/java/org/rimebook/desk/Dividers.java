package org.rimebook.desk;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JSplitPane;
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
    pane.addPropertyChangeListener("UI", change -> divider.listen());
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

    @Override
    public void componentResized(ComponentEvent event) {
      place();
    }

    void place() {
      int length = length();
      int wanted = (int) Math.round(places.get().getOrDefault(name, first) * length);
      if (length > 0 && Math.abs(pane.getDividerLocation() - wanted) > 1) {
        pane.setDividerLocation(wanted);
      }
    }

    private void remember() {
      Map<String, Double> changed = new HashMap<>(places.get());
      changed.put(name, pane.getDividerLocation() / (double) Math.max(1, length()));
      places.set(Map.copyOf(changed));
    }

    private int length() {
      boolean upAndDown = pane.getOrientation() == JSplitPane.VERTICAL_SPLIT;
      return (upAndDown ? pane.getHeight() : pane.getWidth()) - pane.getDividerSize();
    }
  }
}
