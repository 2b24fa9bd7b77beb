package org.rimebook.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.rimebook.export.network.NetworkRun;
import org.rimebook.export.network.SeasonFolder;

/** Tells how far a network is, with the time left by what the seasons so far took. */
final class NetworkProgress implements NetworkRun.Listener {

  private static final double NS_PER_S = 1e9;
  private static final int S_PER_MIN = 60;

  private final int seasons;
  private final PrintWriter err;
  private final LongSupplier clockNs;
  private final long startNs;
  private int done;
  private int made;

  /**
   * @param seasons how many there are
   * @param err where to tell
   * @param clockNs a clock that only runs forward [ns]
   */
  NetworkProgress(int seasons, PrintWriter err, LongSupplier clockNs) {
    this.seasons = seasons;
    this.err = err;
    this.clockNs = clockNs;
    this.startNs = clockNs.getAsLong();
  }

  @Override
  public synchronized void done(SeasonFolder season, NetworkRun.Outcome outcome) {
    done++;
    made += outcome == NetworkRun.Outcome.MADE ? 1 : 0;
    err.println(
        done
            + "/"
            + seasons
            + " "
            + season.name()
            + ": "
            + outcome.name().toLowerCase(Locale.ROOT)
            + left());
    err.flush();
  }

  private String left() {
    if (made == 0 || done == seasons) {
      return "";
    }
    double tookS = (clockNs.getAsLong() - startNs) / NS_PER_S;
    long leftS = Math.round(tookS / made * (seasons - done));
    return leftS < 2 * S_PER_MIN
        ? ", about " + leftS + " s left"
        : ", about " + Math.round(leftS / (double) S_PER_MIN) + " min left";
  }
}
