package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.figure.FigureFile;
import org.rimebook.export.figure.FigureFormat;
import org.rimebook.export.figure.FigureSpec;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.export.figure.OtherDays;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/** Saves the view in sight, its stretch of time and its strips, as a figure for a paper. */
public final class FigureModel {

  private static final int LEAST_DPI = 36;
  private static final int MOST_DPI = 1200;

  private final Workspace workspace;
  private final WhenSettled work;

  /**
   * @param workspace whose view it is
   * @param tasks works away from the event thread
   */
  public FigureModel(Workspace workspace, Tasks tasks) {
    this.workspace = workspace;
    this.work = new WhenSettled(workspace, tasks, Lane.FIGURE);
  }

  /**
   * What is wanted.
   *
   * @param file the file, whose ending says as what
   * @param widthMm width [mm]
   * @param heightMm height [mm]
   * @param dpi dots an inch, for pixels
   */
  public record Wish(Path file, double widthMm, double heightMm, int dpi) {}

  /** How far the work is. */
  public Watched<ExportModel.State> state() {
    return work.state();
  }

  /** Where it goes unless told otherwise. */
  public Path suggestedFile() {
    return workspace
        .opened()
        .get()
        .map(o -> o.folder().resolve("totals").resolve("figure.svg"))
        .orElse(Path.of("figure.svg"));
  }

  /** The strips in sight, from top to bottom. */
  public List<FigureStrip> strips() {
    return workspace.strips().get().stream()
        .filter(StripSetting::shown)
        .flatMap(setting -> strip(setting.kind()).stream())
        .filter(this::measured)
        .toList();
  }

  /** What shows a strip in a figure. */
  private Optional<FigureStrip> strip(StripSetting.Kind kind) {
    return switch (kind) {
      case FREQUENCY -> Optional.of(FigureStrip.FREQUENCY);
      case DEPTH -> Optional.of(FigureStrip.DEPTH);
      case CATCH -> Optional.of(caught());
      case TEMPERATURE -> Optional.of(FigureStrip.TEMPERATURE);
      case WIND -> Optional.of(FigureStrip.WIND);
      case HUMIDITY -> Optional.of(FigureStrip.HUMIDITY);
      case SUPPLY -> Optional.of(FigureStrip.SUPPLY);
      case NEIGHBOUR -> workspace.neighbour().get().map(shown -> FigureStrip.NEIGHBOUR);
    };
  }

  private FigureStrip caught() {
    return switch (workspace.catchForm().get()) {
      case ACCUMULATED -> FigureStrip.CATCH;
      case HOURLY -> FigureStrip.HOURLY;
      case DAILY -> FigureStrip.DAILY;
    };
  }

  private boolean measured(FigureStrip strip) {
    return strip.quantity().isEmpty()
        || workspace
            .opened()
            .get()
            .flatMap(o -> o.season().sheet().channel(strip.quantity().get()))
            .isPresent();
  }

  /** Why a figure can't be saved, and what to do; empty when it can. */
  public Optional<String> obstacle(Wish wish) {
    if (FigureFormat.of(wish.file().toString()).isEmpty()) {
      return Optional.of("The name of a figure ends in .svg, .pdf or .png");
    }
    if (!FigureSpec.fits(wish.widthMm()) || !FigureSpec.fits(wish.heightMm())) {
      return Optional.of("Width and height go from 30 to 2000 mm");
    }
    if (wish.dpi() < LEAST_DPI || wish.dpi() > MOST_DPI) {
      return Optional.of("Dots an inch go from 36 to 1200");
    }
    if (strips().isEmpty()) {
      return Optional.of("No strip is in sight: show one first");
    }
    Path folder = Optional.ofNullable(wish.file().toAbsolutePath().getParent()).orElse(wish.file());
    return ExportModel.obstacle(workspace, folder);
  }

  /** Saves it as soon as totals are settled; nothing while there is an obstacle. */
  public void start(Wish wish) {
    if (obstacle(wish).isPresent()) {
      return;
    }
    Interval span = workspace.view().visible().get();
    FigureSpec spec = new FigureSpec(span, strips(), wish.widthMm(), wish.heightMm());
    Resolution resolution = workspace.resolution().get();
    Optional<OtherDays> beside = workspace.neighbour().get().map(FigureModel::days);
    work.make(
        "Drawing the figure",
        (exact, progress) ->
            write(SeasonFigure.of(exact, exact.totals(resolution), beside, spec), wish),
        saved ->
            workspace
                .notice()
                .set(new Notice(Notice.Weight.NOTE, "The figure is saved as " + saved)));
  }

  private static OtherDays days(Neighbour neighbour) {
    return new OtherDays(neighbour.name(), neighbour.days(), Neighbour.RESOLUTION);
  }

  private static Path write(SeasonFigure figure, Wish wish) throws InputException {
    FigureFormat format = FigureFormat.of(wish.file().toString()).orElseThrow();
    return PaperFile.write(wish.file(), FigureFile.bytes(figure, format, wish.dpi()));
  }

  /** Gives it up. */
  public void cancel() {
    work.cancel();
  }
}
