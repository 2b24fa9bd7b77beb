package org.rimebook.desk.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/**
 * All that one window shows, without a component: what it looks at, what is selected, what is being
 * drawn. Confined to the event thread. The season itself, and writing to its notebook, are with the
 * {@link SeasonKeeper}.
 */
public final class Workspace {

  private final Watched<Optional<Opened>> opened = new Watched<>(Optional.empty());
  private final Watched<Optional<Computed>> computed = new Watched<>(Optional.empty());
  private final Watched<Resolution> resolution = new Watched<>(Resolution.TENTH);
  private final TimeView view = new TimeView(new Interval(0, TimeView.SHORTEST_MS));
  private final Watched<Selection> selection = new Watched<>(Selection.NONE);
  private final Watched<Optional<Entry>> draft = new Watched<>(Optional.empty());
  private final Watched<List<Entry>> furtherDrafts = new Watched<>(List.of());
  private final Watched<OptionalLong> cursorMs = new Watched<>(OptionalLong.empty());
  private final Watched<List<StripSetting>> strips = new Watched<>(firstStrips());
  private final Watched<CatchForm> catchForm = new Watched<>(CatchForm.ACCUMULATED);
  private final Watched<Optional<Neighbour>> neighbour = new Watched<>(Optional.empty());
  private final Watched<Drawer> drawer = new Watched<>(Drawer.CLOSED);
  private final Watched<Optional<Interval>> asked = new Watched<>(Optional.empty());
  private final Watched<FindingsLeft> findings = new Watched<>(FindingsLeft.UNKNOWN);
  private final Watched<FindingOrder> findingOrder = new Watched<>(FindingOrder.STRONGEST);
  private final Watched<Notice> notice = new Watched<>(Notice.NONE);

  /** The season; empty until one is open. */
  public Watched<Optional<Opened>> opened() {
    return opened;
  }

  /** What follows from the season, the draft included; empty until it has been computed. */
  public Watched<Optional<Computed>> computed() {
    return computed;
  }

  /** Resolution of the totals. */
  public Watched<Resolution> resolution() {
    return resolution;
  }

  /** The stretch of time on screen. */
  public TimeView view() {
    return view;
  }

  /** What is selected, in all views alike. */
  public Watched<Selection> selection() {
    return selection;
  }

  /** An entry being made or changed, not yet in the notebook; totals follow it. */
  public Watched<Optional<Entry>> draft() {
    return draft;
  }

  /** Entries being made together with the draft, as one step; set before it. */
  public Watched<List<Entry>> furtherDrafts() {
    return furtherDrafts;
  }

  /** The instant under the cross-hair; empty when the pointer is elsewhere. */
  public Watched<OptionalLong> cursorMs() {
    return cursorMs;
  }

  /** The strips from top to bottom. */
  public Watched<List<StripSetting>> strips() {
    return strips;
  }

  /** How the catch is drawn. */
  public Watched<CatchForm> catchForm() {
    return catchForm;
  }

  /** The neighbour whose catch is shown beside the season's; empty when none is. */
  public Watched<Optional<Neighbour>> neighbour() {
    return neighbour;
  }

  /** What is open under the strips. */
  public Watched<Drawer> drawer() {
    return drawer;
  }

  /** The hour or day whose total is to be explained; empty when none is. */
  public Watched<Optional<Interval>> asked() {
    return asked;
  }

  /** What looks wrong and is left to decide, and which of it is under review. */
  public Watched<FindingsLeft> findings() {
    return findings;
  }

  /** In what order findings are walked. */
  public Watched<FindingOrder> findingOrder() {
    return findingOrder;
  }

  /** The last thing to tell the analyst. */
  public Watched<Notice> notice() {
    return notice;
  }

  private static List<StripSetting> firstStrips() {
    return Arrays.stream(StripSetting.Kind.values())
        .map(kind -> new StripSetting(kind, true, share(kind), true))
        .toList();
  }

  private static double share(StripSetting.Kind kind) {
    return switch (kind) {
      case FREQUENCY -> 2;
      case DEPTH, CATCH -> 3;
      case NEIGHBOUR -> 2;
      default -> 1;
    };
  }
}
