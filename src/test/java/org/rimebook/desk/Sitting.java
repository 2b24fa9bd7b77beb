package org.rimebook.desk;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;

import java.awt.GraphicsEnvironment;
import java.awt.event.MouseEvent;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JComponent;
import javax.swing.JFrame;
import org.junit.jupiter.api.Assumptions;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.StateFolder;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.strip.StripStack;
import org.rimebook.findings.Finding;
import org.rimebook.fixture.Copies;

/** The real window with a copy of a sample season, from opening to closing. */
final class Sitting implements AutoCloseable {

  private static final Path TURN = Path.of("target", "sitting.lock");

  final Person person = new Person();
  private final AtomicBoolean closed = new AtomicBoolean();
  private final FileChannel turn = waitForTurn();
  private final MainWindow window;

  private Sitting(Optional<Path> season, int width, int height) {
    window = Person.see(() -> MainWindow.show(season, Optional.empty(), () -> closed.set(true)));
    Person.see(
        () -> {
          window.frame().setBounds(0, 0, width, height);
          window.frame().validate();
          return null;
        });
    person.waitFor("the whole window", window::isComplete);
  }

  /** Tests named one by one may run in two machines at once, and there is one screen. */
  private static FileChannel waitForTurn() {
    try {
      FileChannel file = FileChannel.open(TURN, CREATE, WRITE);
      file.lock();
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Opens the window.
   *
   * @param season the season folder; empty for the start page
   * @param memory folder for what the program remembers
   * @param width width of the window [pixels]
   * @param height height of the window [pixels]
   */
  static Sitting at(Optional<Path> season, Path memory, int width, int height) {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(), "There is no screen; .ci/run starts a virtual one");
    System.setProperty(StateFolder.PROPERTY, memory.toString());
    return new Sitting(season, width, height);
  }

  /** Opens the window and waits until the season's totals are there. */
  static Sitting with(Path season, Path memory) {
    Sitting sitting = at(Optional.of(season), memory, 1280, 800);
    sitting.waitUntilSettled();
    return sitting;
  }

  void waitUntilSettled() {
    waitFor(Computed.State.SETTLED);
  }

  /** Waits until the totals follow an entry that isn't in the notebook yet. */
  void waitForForeseen() {
    waitFor(Computed.State.FORESEEN);
  }

  private void waitFor(Computed.State state) {
    person.waitFor(
        "totals, " + state,
        () -> workspace().computed().get().filter(c -> c.state() == state).isPresent());
  }

  Workspace workspace() {
    return window.workspace();
  }

  JFrame frame() {
    return window.frame();
  }

  StripStack stack() {
    return window.pane().stack();
  }

  JComponent lane() {
    return window.pane().lane();
  }

  /** Middle of the row of the lane in which a finding stands. */
  int laneRow(Finding finding) {
    return Person.see(
        () -> {
          for (int y = 0; y < lane().getHeight(); y++) {
            String tip = tip(finding, y);
            if (tip != null && tip.contains(finding.reason())) {
              return y + 4;
            }
          }
          throw new AssertionError("the lane doesn't show " + finding.id());
        });
  }

  private String tip(Finding finding, int y) {
    int x = stack().xAt(finding.span().fromMs() + finding.span().lengthMs() / 2);
    return lane()
        .getToolTipText(new MouseEvent(lane(), MouseEvent.MOUSE_MOVED, 0, 0, x, y, 0, false, 0));
  }

  void picture(String name) {
    person.picture(frame(), name);
  }

  /** Copies a sample season, so that its notebook can be written in. */
  static Path copy(String sample, Path into) throws IOException {
    return Copies.of(Path.of("sample-sets", sample), into.resolve(sample));
  }

  /** Closes the window as whoever sits before it does. */
  @Override
  public void close() {
    Person.see(
        () -> {
          frame().dispatchEvent(new WindowEvent(frame(), WindowEvent.WINDOW_CLOSING));
          return null;
        });
    person.waitFor("the window to close", closed::get);
    try {
      turn.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
