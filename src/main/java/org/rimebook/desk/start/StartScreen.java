package org.rimebook.desk.start;

import java.awt.CardLayout;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.Dropped;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Memory;
import org.rimebook.desk.model.RecentList;
import org.rimebook.desk.model.SampleSeason;
import org.rimebook.desk.model.SeasonDraft;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.SeasonMaker;
import org.rimebook.desk.model.SeasonSource;
import org.rimebook.desk.model.Watched;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/**
 * All that stands in the window while no season is being worked on, one thing at a time: the start
 * page, how far opening has come, what is in its way, or the form of a new season.
 */
public final class StartScreen extends JPanel {

  private enum Card {
    START,
    OPENING,
    FAULT,
    NEW
  }

  private final Workspace workspace;
  private final SeasonKeeper keeper;
  private final Tasks tasks;
  private final Memory memory;
  private final Clock clock;
  private final CardLayout cards = new CardLayout();
  private final Watched<Boolean> front = new Watched<>(true);
  private final Choosers choosers = new Choosers(this);
  private final DeskAction open;
  private final DeskAction begin;
  private final OpeningPanel opening;
  private Optional<StartPage> start = Optional.empty();
  private Optional<FaultPanel> fault = Optional.empty();
  private Optional<NewSeasonPage> form = Optional.empty();
  private Path samples = SampleSeason.home();
  private Card card = Card.START;

  /**
   * Nothing is shown yet; {@link #goHome} or {@link #open} begins.
   *
   * @param workspace tells when a season is open
   * @param keeper opens seasons
   * @param tasks runs what takes long
   * @param memory remembers recent seasons
   * @param clock tells how long ago they were opened
   */
  public StartScreen(
      Workspace workspace, SeasonKeeper keeper, Tasks tasks, Memory memory, Clock clock) {
    this.workspace = workspace;
    this.keeper = keeper;
    this.tasks = tasks;
    this.memory = memory;
    this.clock = clock;
    setLayout(cards);
    open =
        DeskAction.named(Group.SEASON, "Open season…", this::chooseSeason)
            .saying("Opens a season folder; a folder without a station sheet begins a new season")
            .key("control O")
            .mnemonic('O')
            .done();
    begin =
        DeskAction.named(Group.SEASON, "New season…", this::chooseRecord)
            .saying("Begins a season from files of the logger")
            .key("control N")
            .mnemonic('N')
            .done();
    opening = new OpeningPanel(tasks, this::cancel);
    add(opening, Card.OPENING.name());
    workspace.opened().watch(opened -> turn(opened.isPresent()));
  }

  /** The page, made when it is first to be seen. */
  private StartPage start() {
    if (start.isEmpty()) {
      StartPage page = new StartPage(asking(), List.of(open, begin));
      page.samplesIn(samples);
      add(page, Card.START.name());
      start = Optional.of(page);
    }
    return start.get();
  }

  /** The panel, made when it is first to be seen. */
  private FaultPanel fault() {
    if (fault.isEmpty()) {
      FaultPanel panel = new FaultPanel(this::chooseSeason, this::leave);
      add(panel, Card.FAULT.name());
      fault = Optional.of(panel);
    }
    return fault.get();
  }

  private StartPage.Asking asking() {
    return new StartPage.Asking(
        season -> open(season.folder()),
        season -> {
          memory.forget(season.folder());
          look();
        },
        this::openSample,
        this::chooseSamples,
        this::leave);
  }

  /** Whether it is to be seen now, instead of the season. */
  public Watched<Boolean> front() {
    return front;
  }

  /** What it offers, as actions of the menu of seasons. */
  public List<DeskAction> actions() {
    return List.of(
        open,
        begin,
        DeskAction.named(Group.SEASON, "Recent seasons", this::goHome)
            .saying("Shows the seasons that were open before, and the samples")
            .key("control shift O")
            .mnemonic('R')
            .done(),
        DeskAction.named(Group.SEASON, "Close season", keeper::close)
            .saying("Closes the season; every entry is on disk already")
            .key("control W")
            .mnemonic('C')
            .when(() -> workspace.opened().get().isPresent())
            .done());
  }

  /** Takes what is dropped on the window; to be set on its root pane. */
  public TransferHandler dropHandler() {
    return new SeasonDrop(this::take);
  }

  /** Opens a season folder, or says here what is in the way. */
  public void open(Path folder) {
    show(Card.OPENING);
    keeper.open(
        folder, why -> blame(folder.getFileName() + " can't be opened", why, () -> open(folder)));
  }

  /** Opens a season folder, or begins a new season with anything else. */
  public void take(List<Path> paths) {
    look("Looking at " + paths.get(0).getFileName(), () -> Dropped.of(paths), this::take);
  }

  private void take(Dropped dropped) {
    if (dropped.kind() == Dropped.Kind.SEASON) {
      open(dropped.paths().get(0));
    } else {
      begin(dropped.paths());
    }
  }

  private void begin(List<Path> paths) {
    tasks.run(
        Lane.PREVIEW_FILE,
        "Looking at " + paths.get(0).getFileName(),
        progress -> SeasonSource.of(paths),
        this::fill,
        why ->
            blame(
                "No season can be made of " + paths.get(0).getFileName(), why, () -> begin(paths)));
  }

  private interface Looking<T> {
    T look();
  }

  private <T> void look(String name, Looking<T> looking, Consumer<T> then) {
    tasks.run(
        Lane.PREVIEW_FILE,
        name,
        progress -> looking.look(),
        then,
        why -> blame("The disk can't be read", why, this::leave));
  }

  private void fill(SeasonSource source) {
    boolean entered = form.map(NewSeasonPage::entered).orElse(false);
    if (entered && !choosers.replaces()) {
      show(Card.NEW);
      return;
    }
    form.ifPresent(this::remove);
    NewSeasonPage page =
        new NewSeasonPage(
            source, new NewSeasonPage.Asking(this::make, choosers::folderFor, this::leave));
    form = Optional.of(page);
    add(page, Card.NEW.name());
    show(Card.NEW);
  }

  private void make(SeasonDraft draft) {
    show(Card.OPENING);
    tasks.run(
        Lane.OPEN,
        "Making " + draft.folder().getFileName(),
        progress -> SeasonMaker.make(draft, progress),
        this::open,
        why -> {
          show(Card.NEW);
          form.ifPresent(page -> page.refuse(Faults.words(why)));
        });
  }

  private void openSample(SampleSeason sample) {
    Path parent = samples;
    show(Card.OPENING);
    tasks.run(
        Lane.OPEN,
        "Writing " + sample.folderName(),
        progress -> sample.write(parent, progress),
        this::open,
        why -> blame(sample.title() + " can't be written", why, () -> openSample(sample)));
  }

  private void blame(String what, Throwable why, Runnable again) {
    fault().show(what, why, again);
    show(Card.FAULT);
  }

  private void cancel() {
    tasks.cancel(Lane.OPEN);
    leave();
  }

  /** Back to the season if one is open, to the form if one is under way, else to the start. */
  private void leave() {
    if (card != Card.NEW && form.isPresent()) {
      show(Card.NEW);
    } else if (workspace.opened().get().isPresent()) {
      form.ifPresent(this::remove);
      form = Optional.empty();
      front.set(false);
    } else {
      goHome();
    }
  }

  /** Shows the start page. */
  public void goHome() {
    form.ifPresent(this::remove);
    form = Optional.empty();
    start().offerBack(workspace.opened().get().isPresent());
    show(Card.START);
    look();
  }

  /** A season that is being replaced is closed for a moment, which isn't to be seen. */
  private void turn(boolean open) {
    if (open) {
      form.ifPresent(this::remove);
      form = Optional.empty();
      front.set(false);
    } else if (card != Card.OPENING || !front.get()) {
      goHome();
    }
  }

  private void look() {
    look(
        "Looking for recent seasons",
        () -> RecentList.look(memory.recent(), clock.instant()),
        list -> start().show(list));
  }

  private void show(Card wanted) {
    card = wanted;
    cards.show(this, wanted.name());
    front.set(true);
    switch (wanted) {
      case START -> start().focus();
      case OPENING -> opening.focus();
      case FAULT -> fault().focus();
      default -> form.ifPresent(NewSeasonPage::focus);
    }
  }

  private void chooseSeason() {
    choosers.season().ifPresent(folder -> take(List.of(folder)));
  }

  private void chooseRecord() {
    choosers.record().ifPresent(this::begin);
  }

  private void chooseSamples() {
    samples = choosers.folderFor(samples);
    start().samplesIn(samples);
  }
}
