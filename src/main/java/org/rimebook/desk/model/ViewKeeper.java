package org.rimebook.desk.model;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.rimebook.totals.Totals;

/**
 * Opens a season to the view it was left in, and remembers the view as it changes, as well as which
 * seasons were open and what they came to.
 */
public final class ViewKeeper {

  private final Workspace workspace;
  private final Memory memory;
  private final Clock clock;
  private final Watched<Map<String, Double>> dividers = new Watched<>(Map.of());
  private final Watched<String> notebookFilter = new Watched<>("");
  private Optional<RecentSeason> open = Optional.empty();

  /**
   * @param workspace the workspace, watched from now on
   * @param memory remembers
   * @param clock tells when a season is opened
   */
  public ViewKeeper(Workspace workspace, Memory memory, Clock clock) {
    this.workspace = workspace;
    this.memory = memory;
    this.clock = clock;
    workspace.opened().follow(this::turn);
    workspace.computed().watch(computed -> computed.ifPresent(this::settled));
    workspace.view().visible().watch(change -> store());
    workspace.strips().watch(change -> store());
    workspace.catchForm().watch(change -> store());
    workspace.drawer().watch(change -> store());
    workspace.resolution().watch(change -> store());
    workspace.selection().watch(change -> store());
    workspace.findingOrder().watch(change -> store());
    dividers.watch(change -> store());
    notebookFilter.watch(change -> store());
  }

  /** Places of the dividers by name, as shares of their length, 0 to 1. */
  public Watched<Map<String, Double>> dividers() {
    return dividers;
  }

  /** What the notebook page is filtered by. */
  public Watched<String> notebookFilter() {
    return notebookFilter;
  }

  /** An entry changes what is open, too; only another season has another view. */
  private void turn(Optional<Opened> opened) {
    if (opened.isEmpty()) {
      open = Optional.empty();
    } else if (open.isEmpty()) {
      Path folder = opened.get().folder().toAbsolutePath().normalize();
      notebookFilter.set("");
      memory.view(folder).ifPresent(this::restore);
      RecentSeason season =
          new RecentSeason(
              folder, opened.get().season().sheet().name(), clock.instant(), Optional.empty());
      open = Optional.of(season);
      memory.recent(season);
      store();
    }
  }

  private void restore(ViewState state) {
    workspace.resolution().set(state.resolution());
    workspace.catchForm().set(state.catchForm());
    workspace.drawer().set(state.drawer());
    workspace.selection().set(state.selection());
    workspace.strips().set(completed(state.strips()));
    workspace.findingOrder().set(state.findingOrder());
    dividers.set(state.dividers());
    notebookFilter.set(state.notebookFilter());
    state.visible().ifPresent(workspace.view()::move);
  }

  /** Strips a later version added come last, as they are at first. */
  private List<StripSetting> completed(List<StripSetting> remembered) {
    List<StripSetting> strips = new ArrayList<>(remembered);
    for (StripSetting now : workspace.strips().get()) {
      if (remembered.stream().noneMatch(strip -> strip.kind() == now.kind())) {
        strips.add(now);
      }
    }
    return List.copyOf(strips);
  }

  private void settled(Computed computed) {
    if (open.isPresent() && computed.state() == Computed.State.SETTLED) {
      RecentSeason season = open.get();
      memory.recent(
          new RecentSeason(
              season.folder(), season.name(), season.opened(), total(computed.totals())));
    }
  }

  private static Optional<BigDecimal> total(Totals totals) {
    OptionalLong units = totals.seasonUnits();
    return units.isPresent()
        ? Optional.of(totals.resolution().toMm(units.getAsLong()))
        : Optional.empty();
  }

  private void store() {
    open.ifPresent(season -> memory.view(season.folder(), now()));
  }

  private ViewState now() {
    return new ViewState(
        Optional.of(workspace.view().visible().get()),
        workspace.strips().get(),
        workspace.catchForm().get(),
        workspace.drawer().get(),
        workspace.resolution().get(),
        workspace.selection().get(),
        dividers.get(),
        notebookFilter.get(),
        workspace.findingOrder().get());
  }
}
