package org.rimebook.desk;

import java.awt.GraphicsEnvironment;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;
import org.rimebook.desk.model.ReadAhead;

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
    Optional<ReadAhead> ahead = season.map(ReadAhead::of);
    if (GraphicsEnvironment.isHeadless()) {
      return false;
    }
    CountDownLatch closed = new CountDownLatch(1);
    try {
      SwingUtilities.invokeAndWait(() -> MainWindow.show(season, ahead, closed::countDown));
      closed.await();
    } catch (InvocationTargetException e) {
      throw new IllegalStateException("The window couldn't be opened", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return true;
  }
}
