package org.rimebook.desk.strip;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.StripSetting;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.series.LinesAhead;
import org.rimebook.desk.series.SeasonSeries;
import org.rimebook.desk.task.Tasks;

/**
 * The strips there are, whichever way they were prepared; told apart from how they lie on screen.
 */
final class Strips {

  private final Workspace workspace;
  private final Runnable changed;
  private final StripFeed feed;
  private final Map<Kind, StripPlot> plots = new EnumMap<>(Kind.class);
  private Optional<SeasonSeries> drawn = Optional.empty();

  Strips(Workspace workspace, Tasks tasks, Runnable changed) {
    this.workspace = workspace;
    this.changed = changed;
    this.feed = new StripFeed(workspace, tasks, this::renew);
    workspace.catchForm().watch(form -> renew());
    workspace.neighbour().watch(neighbour -> renew());
    renew();
  }

  /** Draws the first season from lines made elsewhere, if they are its. */
  void expect(LinesAhead lines) {
    feed.expect(lines);
  }

  /** A strip on screen. */
  record Shown(StripSetting setting, StripPlot plot) {}

  /**
   * The strips there is room for, from top to bottom. When there isn't room for all, those with the
   * smallest share give way first, of equal ones the lowest.
   *
   * @param fits whether strips of these shares can be read
   */
  List<Shown> fitting(Predicate<List<Double>> fits) {
    List<Shown> left = new ArrayList<>(shown());
    while (left.size() > 1 && !fits.test(left.stream().map(s -> s.setting().share()).toList())) {
      int least = left.size() - 1;
      for (int i = least; i >= 0; i--) {
        least = left.get(i).setting().share() < left.get(least).setting().share() ? i : least;
      }
      left.remove(least);
    }
    return left;
  }

  /** The strips that are to be on screen, from top to bottom, whether there is room or not. */
  List<Shown> shown() {
    return workspace.strips().get().stream()
        .filter(setting -> setting.shown() && plots.containsKey(setting.kind()))
        .map(setting -> new Shown(setting, plots.get(setting.kind())))
        .toList();
  }

  /** The season's lines; empty until they are prepared. */
  Optional<SeasonSeries> series() {
    return feed.series();
  }

  /** The catch; empty until it is computed. */
  Optional<StripFeed.Caught> caught() {
    return feed.caught();
  }

  /** Whether the season may have a strip of a kind. */
  boolean has(Kind kind) {
    return kind == Kind.NEIGHBOUR
        ? workspace.neighbour().get().isPresent()
        : StripContents.has(feed.series(), kind);
  }

  /** Changes how a strip stands. */
  void change(StripSetting changedSetting) {
    StripSetting settled = settled(changedSetting);
    workspace
        .strips()
        .set(
            workspace.strips().get().stream()
                .map(s -> s.kind() == settled.kind() ? settled : s)
                .toList());
  }

  /** Has the axes of all strips fit what is in view, or stay as they are. */
  void fitAll(boolean fits) {
    workspace
        .strips()
        .set(workspace.strips().get().stream().map(s -> settled(s.fitting(fits))).toList());
  }

  /** A setting whose axis stands as its strip does: it follows a stated one, and tells its own. */
  private StripSetting settled(StripSetting setting) {
    StripPlot plot = plots.get(setting.kind());
    if (setting.fits() || plot == null) {
      return setting;
    }
    setting.axis().ifPresent(plot::range);
    return plot.isRanged() ? setting.staying(plot.range()) : setting;
  }

  private void renew() {
    if (feed == null) {
      return;
    }
    Optional<Opened> opened = workspace.opened().get();
    if (opened.isEmpty() || feed.series().isEmpty()) {
      plots.clear();
      drawn = Optional.empty();
      changed.run();
      return;
    }
    SeasonSeries lines = feed.series().get();
    if (drawn.filter(d -> d == lines).isEmpty()) {
      StripContents.lines(lines, opened.get().season().sheet()).forEach(this::put);
      drawn = feed.series();
    }
    feed.caught()
        .ifPresentOrElse(
            caught ->
                put(
                    Kind.CATCH,
                    StripContents.caught(caught, caught.from(), workspace.catchForm().get())),
            () -> plots.remove(Kind.CATCH));
    workspace
        .neighbour()
        .get()
        .ifPresentOrElse(
            neighbour -> put(Kind.NEIGHBOUR, StripContents.of(neighbour)),
            () -> plots.remove(Kind.NEIGHBOUR));
    changed.run();
  }

  /**
   * Puts a strip in place of the one before, on the same axis until it fits; the first stands as it
   * was left, and one that shows something else finds its own.
   */
  private void put(Kind kind, StripPlot plot) {
    StripPlot before = plots.put(kind, plot);
    Optional<StripSetting> setting =
        workspace.strips().get().stream().filter(s -> s.kind() == kind).findFirst();
    if (before == null) {
      setting.flatMap(StripSetting::axis).ifPresent(plot::range);
    } else if (!before.title().equals(plot.title())) {
      setting.filter(s -> s.axis().isPresent()).ifPresent(s -> change(s.fitting(false)));
    } else if (before.isRanged()) {
      plot.range(before.range());
    }
  }
}
