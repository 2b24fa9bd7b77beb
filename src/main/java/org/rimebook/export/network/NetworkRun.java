package org.rimebook.export.network;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.stream.Collectors;
import org.rimebook.export.SeasonExport;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/**
 * Makes the tables of every season of a network, side by side. What comes of a season is what it
 * comes to alone, whatever runs beside it. A season that can't be made doesn't stop the others.
 */
public final class NetworkRun {

  private static final double SHARE_OF_HEAP = 0.8;

  private final Path out;
  private final Settings settings;
  private final Heap heap;
  private final Listener listener;

  /**
   * How a network is made.
   *
   * @param resolution resolution of the totals
   * @param atATime most seasons at a time, at least 1
   * @param anew whether also those are made whose inputs haven't changed
   */
  public record Settings(Resolution resolution, int atATime, boolean anew) {}

  /** What came of a season. */
  public enum Outcome {
    /** It was made. */
    MADE,
    /** Nothing had changed since it was made; it was left alone. */
    KEPT,
    /** It couldn't be made. */
    FAILED
  }

  /** Hears of each season when it is done, from several threads. */
  public interface Listener {

    /**
     * A season is done.
     *
     * @param season the season
     * @param outcome what came of it
     */
    void done(SeasonFolder season, Outcome outcome);
  }

  /**
   * @param out where the tables go, each season's in the folder of its name
   * @param settings how
   * @param listener hears of it
   */
  public NetworkRun(Path out, Settings settings, Listener listener) {
    this.out = out;
    this.settings = settings;
    this.listener = listener;
    this.heap = new Heap((long) (SHARE_OF_HEAP * Runtime.getRuntime().maxMemory()));
  }

  /** Makes the seasons; what came of each, in their order. */
  public List<NetworkRow> rows(List<SeasonFolder> seasons) throws InterruptedException {
    ExecutorService threads = Executors.newFixedThreadPool(settings.atATime());
    try {
      List<Future<NetworkRow>> running = new ArrayList<>();
      for (SeasonFolder season : seasons) {
        running.add(threads.submit(() -> rowOrError(season)));
      }
      List<NetworkRow> rows = new ArrayList<>();
      for (Future<NetworkRow> row : running) {
        rows.add(row.get());
      }
      return rows;
    } catch (ExecutionException e) {
      throw new IllegalStateException("what a season comes to is never an exception", e);
    } finally {
      threads.shutdownNow();
    }
  }

  /** Whatever stops one season, the others go on. */
  private NetworkRow rowOrError(SeasonFolder season) throws InterruptedException {
    FutureTask<NetworkRow> task = new FutureTask<>(() -> row(season));
    task.run();
    try {
      return task.get();
    } catch (ExecutionException e) {
      listener.done(season, Outcome.FAILED);
      return NetworkRow.failed(season.name(), words(e.getCause(), season.tables(out)));
    }
  }

  private static String words(Throwable fault, Path tables) {
    if (fault instanceof InputException input) {
      return input.problems().stream().map(Problem::toString).collect(Collectors.joining("; "));
    }
    if (fault instanceof IOException unwritten) {
      return "its tables can't be written (" + FileFault.words(unwritten, tables) + ")";
    }
    if (fault instanceof OutOfMemoryError) {
      return "its record needs more memory than there is; give Java more with -Xmx";
    }
    return "the program failed on it (" + fault + "); please report it";
  }

  private NetworkRow row(SeasonFolder season)
      throws InputException, IOException, InterruptedException {
    Season.Outline outline = Season.outline(season.folder());
    MadeTables tables = new MadeTables(season.tables(out));
    boolean keep = !settings.anew() && tables.current(outline.digests(), settings.resolution());
    if (!keep) {
      int need = heap.needMiB(outline.size());
      heap.take(need);
      try {
        make(season);
      } finally {
        heap.giveBack(need);
      }
    }
    NetworkRow row = tables.row(season.name());
    listener.done(season, keep ? Outcome.KEPT : Outcome.MADE);
    return row;
  }

  private void make(SeasonFolder season) throws InputException, IOException {
    Season opened = Season.open(season.folder());
    Path tables = season.tables(out);
    if (SeasonExport.amongTheRecord(opened, season.folder(), tables)) {
      throw new InputException(
          Problem.inFile(
              tables.toString(),
              "holds logger files of the season; tables written there would be read as such",
              "Name another folder with --out"));
    }
    SeasonExport.write(SeasonResult.of(opened), settings.resolution(), tables, Progress.NONE);
  }
}
