package org.rimebook.desk.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/**
 * How a season was looked at.
 *
 * @param visible the stretch of time on screen; empty when not known
 * @param strips the strips from top to bottom; empty when not known
 * @param catchForm how the catch is drawn
 * @param drawer what is open under the strips
 * @param resolution resolution of the totals
 * @param selection what is selected
 * @param dividers places of the dividers by name, as shares of their length, 0 to 1
 * @param notebookFilter what the notebook page is filtered by; empty when it isn't
 * @param findingOrder in what order findings are walked
 */
public record ViewState(
    Optional<Interval> visible,
    List<StripSetting> strips,
    CatchForm catchForm,
    Drawer drawer,
    Resolution resolution,
    Selection selection,
    Map<String, Double> dividers,
    String notebookFilter,
    FindingOrder findingOrder) {

  public ViewState {
    strips = List.copyOf(strips);
    dividers = Map.copyOf(dividers);
  }
}
