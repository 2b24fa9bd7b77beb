package org.rimebook.desk;

import java.util.HashMap;
import java.util.Map;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
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
    places.watch(known -> place(pane, known.getOrDefault(name, first)));
    SwingUtilities.invokeLater(() -> place(pane, places.get().getOrDefault(name, first)));
    pane.addPropertyChangeListener(
        JSplitPane.DIVIDER_LOCATION_PROPERTY, change -> remember(name, pane));
    pane.addPropertyChangeListener("ancestor", change -> place(pane, share(name, first)));
    return this;
  }

  private double share(String name, double first) {
    return places.get().getOrDefault(name, first);
  }

  private static void place(JSplitPane pane, double share) {
    int length = length(pane);
    int wanted = (int) Math.round(share * length);
    if (length > 0 && Math.abs(pane.getDividerLocation() - wanted) > 1) {
      pane.setDividerLocation(wanted);
    }
  }

  private void remember(String name, JSplitPane pane) {
    int length = length(pane);
    boolean both = pane.getRightComponent().isVisible() && pane.getLeftComponent().isVisible();
    if (length <= 0 || !both || !pane.isShowing()) {
      return;
    }
    Map<String, Double> changed = new HashMap<>(places.get());
    changed.put(name, pane.getDividerLocation() / (double) length);
    places.set(Map.copyOf(changed));
  }

  private static int length(JSplitPane pane) {
    boolean upAndDown = pane.getOrientation() == JSplitPane.VERTICAL_SPLIT;
    return (upAndDown ? pane.getHeight() : pane.getWidth()) - pane.getDividerSize();
  }
}
