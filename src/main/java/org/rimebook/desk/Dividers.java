package org.rimebook.desk;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.HashMap;
import java.util.Map;
import javax.swing.JSplitPane;
import org.rimebook.desk.model.Watched;

/** Keeps dividers where they were left, as shares of the length they divide. */
final class Dividers {

  private final Watched<Map<String, Double>> places;

  Dividers(Watched<Map<String, Double>> places) {
    this.places = places;
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
    pane.addComponentListener(divider);
    pane.addPropertyChangeListener(
        JSplitPane.DIVIDER_LOCATION_PROPERTY, change -> divider.remember());
    places.watch(known -> divider.place());
    return this;
  }

  /** One of them. */
  private final class Divider extends ComponentAdapter {
    private final String name;
    private final JSplitPane pane;
    private final double first;
    private int placedAtLength;

    Divider(String name, JSplitPane pane, double first) {
      this.name = name;
      this.pane = pane;
      this.first = first;
    }

    @Override
    public void componentResized(ComponentEvent event) {
      place();
    }

    void place() {
      int length = length();
      if (length <= 0) {
        return;
      }
      placedAtLength = 0;
      int wanted = (int) Math.round(places.get().getOrDefault(name, first) * length);
      if (Math.abs(pane.getDividerLocation() - wanted) > 1) {
        pane.setDividerLocation(wanted);
      }
      placedAtLength = length;
    }

    /** Only a move without a change of size is a hand's; layout moves it as well. */
    void remember() {
      int length = length();
      boolean both = pane.getRightComponent().isVisible() && pane.getLeftComponent().isVisible();
      if (length == placedAtLength && length > 0 && both) {
        Map<String, Double> changed = new HashMap<>(places.get());
        changed.put(name, pane.getDividerLocation() / (double) length);
        places.set(Map.copyOf(changed));
      }
    }

    private int length() {
      boolean upAndDown = pane.getOrientation() == JSplitPane.VERTICAL_SPLIT;
      return (upAndDown ? pane.getHeight() : pane.getWidth()) - pane.getDividerSize();
    }
  }
}
