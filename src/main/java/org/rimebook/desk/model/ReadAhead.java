package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

/**
 * Reads a season while the window is still being made. Whoever waits for it hears how far it is.
 */
public final class ReadAhead {

  private final Path folder;
  private final FutureTask<Opened> reading;
  private volatile Progress waiting = Progress.NONE;

  private ReadAhead(Path folder, Consumer<Opened> then) {
    this.folder = folder;
    this.reading =
        new FutureTask<>(
            () -> {
              Opened opened = SeasonStages.open(folder, new Relay());
              then.accept(opened);
              return opened;
            });
  }

  /**
   * Starts to read a season folder.
   *
   * @param folder the folder
   * @param then told the season, before anybody else has it, on the thread that has read it
   */
  public static ReadAhead of(Path folder, Consumer<Opened> then) {
    ReadAhead ahead = new ReadAhead(folder, then);
    Thread thread = new Thread(ahead.reading, "reading ahead");
    thread.setDaemon(true);
    thread.start();
    return ahead;
  }

  /** The folder. */
  Path folder() {
    return folder;
  }

  /** Waits for the season. */
  Opened season(Progress progress) throws InputException, InterruptedException {
    waiting = progress;
    try {
      return reading.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof InputException input) {
        throw input;
      }
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      if (e.getCause() instanceof Error fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private final class Relay implements Progress {
    @Override
    public void at(String stage, double share) {
      waiting.at(stage, share);
    }

    @Override
    public boolean cancelled() {
      return waiting.cancelled();
    }
  }
}
