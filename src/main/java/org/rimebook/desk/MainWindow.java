package org.rimebook.desk;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.look.Icons;
import org.rimebook.desk.model.Memory;
import org.rimebook.desk.model.MemoryFile;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.StateFolder;
import org.rimebook.desk.model.ViewKeeper;
import org.rimebook.desk.model.WindowState;
import org.rimebook.desk.model.WindowState.Place;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.report.PaperDialogs;
import org.rimebook.desk.start.StartScreen;
import org.rimebook.desk.table.SeasonDialogs;
import org.rimebook.desk.task.SwingTasks;

/** The window: puts the parts together and ends when it is closed. */
final class MainWindow {

  private static final String START = "start";
  private static final String SEASON = "season";
  private static final int LEAST_WIDTH = 720;
  private static final int LEAST_HEIGHT = 480;

  private final Workspace workspace = new Workspace();
  private final ExecutorService writing = Executors.newSingleThreadExecutor(MainWindow::quiet);
  private final Memory memory =
      new MemoryFile(StateFolder.here().resolve(MemoryFile.NAME), writing, this::tellLater);
  private final ActionBook book = new ActionBook();
  private final SwingTasks tasks = new SwingTasks();
  private final SeasonKeeper keeper;
  private final JFrame frame;
  private final StartScreen start;
  private final SeasonPane pane;
  private final SeasonPages pages;
  private final FirstPicture picture;
  private boolean complete;

  private MainWindow() {
    new FaultNet(workspace, StateFolder.here().resolve("faults.txt"), Clock.systemUTC()).install();
    Appearance appearance = new Appearance(memory);
    appearance.install();
    keeper = new SeasonKeeper(workspace, tasks, Clock.systemUTC());
    keeper.writer(memory.initials());
    ViewKeeper views = new ViewKeeper(workspace, memory, Clock.systemUTC());
    frame = new JFrame("Rimebook");
    start = new StartScreen(workspace, keeper, tasks, memory, Clock.systemUTC());
    pane = new SeasonPane(workspace, keeper, tasks, views);
    pages = new SeasonPages(pane);
    picture = new FirstPicture(pane.stack()::isDrawn);
    keeper.computeAfter(picture::then);
    book.add(start.actions());
    book.add(pane.actions());
    book.add(appearance.actions());
    book.add(List.of(ReadingNotes.action(frame, workspace)));
    book.add(help());
    frame.setContentPane(content(new StatusLine(workspace, tasks)));
    frame.setJMenuBar(book.menus());
    book.bind(frame.getRootPane());
    frame.getRootPane().setTransferHandler(start.dropHandler());
    follow();
  }

  /**
   * Shows the window; to be called on the event thread.
   *
   * @param season the season to open, if any
   * @param ahead the same season being got ready already, if it is
   * @param closed told when the window is closed
   */
  static MainWindow show(Optional<Path> season, Optional<Ahead> ahead, Runnable closed) {
    MainWindow window = new MainWindow();
    ahead.map(Ahead::season).ifPresent(window.keeper::expect);
    ahead.map(Ahead::lines).ifPresent(window.pane.stack()::expect);
    window.frame.setDefaultCloseOperation(JFrame.DISPOSE_ON_CLOSE);
    window.frame.addWindowListener(window.leaving(closed));
    window.place();
    season.ifPresentOrElse(window.start::open, window.start::goHome);
    window.frame.setVisible(true);
    // These may come a moment after the window does, while the season is still read.
    SwingUtilities.invokeLater(() -> window.book.fill(window.frame.getJMenuBar()));
    SwingUtilities.invokeLater(window.pane::furnish);
    if (season.isPresent()) {
      window.picture.then(window::complete);
    } else {
      SwingUtilities.invokeLater(window::complete);
    }
    return window;
  }

  JFrame frame() {
    return frame;
  }

  Workspace workspace() {
    return workspace;
  }

  SeasonPane pane() {
    return pane;
  }

  private void tellLater(Notice notice) {
    SwingUtilities.invokeLater(() -> workspace.notice().set(notice));
  }

  private JPanel content(StatusLine status) {
    JPanel deck = new JPanel(new CardLayout());
    JPanel season = new JPanel(new BorderLayout());
    season.add(new Header(workspace), BorderLayout.NORTH);
    season.add(pages);
    deck.add(start, START);
    deck.add(season, SEASON);
    start
        .front()
        .follow(
            front -> {
              ((CardLayout) deck.getLayout()).show(deck, front ? START : SEASON);
              pages.resume();
            });
    JPanel all = new JPanel(new BorderLayout());
    all.add(deck);
    all.add(status, BorderLayout.SOUTH);
    return all;
  }

  private List<DeskAction> help() {
    return List.of(
        DeskAction.named(Group.HELP, "Keys", () -> KeyList.show(frame, book))
            .saying("All keys, group by group")
            .key("F1")
            .mnemonic('K')
            .done());
  }

  /** Makes what the first picture of the season can do without. */
  private void complete() {
    book.add(pane.complete(keeper, tasks));
    // An event of its own, so that neither holds the window up for long.
    SwingUtilities.invokeLater(this::completeRest);
  }

  private void completeRest() {
    book.add(new SeasonDialogs(workspace, keeper, tasks, () -> frame).actions());
    book.add(pages.complete(bench(), tasks, this::say));
    book.add(new PaperDialogs(workspace, tasks, () -> frame).actions());
    book.fill(frame.getJMenuBar());
    book.bind(frame.getRootPane());
    frame.validate();
    dressFrame();
    complete = true;
  }

  /** The icon takes a tenth of a second to draw, in which the window has better to do. */
  private void dressFrame() {
    Thread thread =
        new Thread(
            () -> {
              List<Image> icons = Icons.window();
              SwingUtilities.invokeLater(() -> frame.setIconImages(icons));
            },
            "icon");
    thread.setDaemon(true);
    thread.start();
  }

  private BenchModel bench() {
    return new BenchModel(workspace, keeper, tasks, start::open);
  }

  private void say(String words) {
    workspace.notice().set(new Notice(Notice.Weight.NOTE, words));
  }

  /** Whether the whole window is there. */
  boolean isComplete() {
    return complete;
  }

  private void follow() {
    workspace
        .opened()
        .follow(
            opened ->
                frame.setTitle(
                    opened.map(o -> o.season().sheet().name() + " · Rimebook").orElse("Rimebook")));
    workspace.opened().watch(opened -> memory.initials(keeper.writer()));
    workspace.opened().watch(opened -> book.refresh());
    workspace.computed().watch(computed -> book.refresh());
    workspace.selection().watch(selection -> book.refresh());
  }

  private void place() {
    frame.setMinimumSize(new Dimension(LEAST_WIDTH, LEAST_HEIGHT));
    Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
    Rectangle first =
        new Rectangle(0, 0, Math.min(screen.width, 1600), Math.min(screen.height, 1000));
    Rectangle known =
        memory
            .window()
            .place()
            .map(there -> there.on(screen.width, screen.height))
            .map(p -> new Rectangle(p.x(), p.y(), p.width(), p.height()))
            .filter(new Rectangle(screen)::intersects)
            .orElse(first);
    frame.setBounds(known);
    if (memory.window().maximised()) {
      frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
    }
  }

  private WindowAdapter leaving(Runnable closed) {
    return new WindowAdapter() {
      @Override
      public void windowClosing(WindowEvent event) {
        boolean whole = frame.getExtendedState() == JFrame.MAXIMIZED_BOTH;
        Rectangle r = frame.getBounds();
        WindowState state = memory.window();
        memory.window(
            whole
                ? state.at(state.place(), true)
                : state.at(Optional.of(new Place(r.x, r.y, r.width, r.height)), false));
        memory.initials(keeper.writer());
        memory.flush();
        writing.shutdown();
      }

      @Override
      public void windowClosed(WindowEvent event) {
        closed.run();
      }
    };
  }

  private static Thread quiet(Runnable work) {
    Thread thread = new Thread(work, "memory");
    thread.setDaemon(true);
    return thread;
  }
}
