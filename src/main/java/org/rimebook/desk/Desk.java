package org.rimebook.desk;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Typeface;

/** Opens the workspace. */
public final class Desk {

  private Desk() {}

  /**
   * Opens the window and returns once it is closed.
   *
   * @param season the season folder to open; empty for the start page
   * @return false when there is no screen
   */
  public static boolean open(Optional<Path> season) {
    Optional<Ahead> ahead = season.map(Ahead::of);
    if (GraphicsEnvironment.isHeadless()) {
      return false;
    }
    CountDownLatch closed = new CountDownLatch(1);
    FutureTask<MainWindow> window =
        new FutureTask<>(() -> MainWindow.show(season, ahead, closed::countDown));
    try {
      SwingUtilities.invokeLater(window);
      // Takes a tenth of a second, in which the event thread has other things to make.
      Typeface.load();
      window.get();
      closed.await();
    } catch (ExecutionException e) {
      throw new IllegalStateException("The window couldn't be opened", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return true;
  }
}
