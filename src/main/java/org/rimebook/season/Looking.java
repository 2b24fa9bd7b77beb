package org.rimebook.season;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.rimebook.findings.Findings;
import org.rimebook.findings.Scene;
import org.rimebook.station.Progress;

/**
 * Looks for what is wrong while the catch is estimated; neither needs the other. It tells nothing
 * of how far it has come, since the estimate does, and stops when that is called off.
 */
final class Looking {

  private final CompletableFuture<Findings> findings;

  private Looking(CompletableFuture<Findings> findings) {
    this.findings = findings;
  }

  /** Begins to look. */
  static Looking at(Scene scene, Progress progress) {
    return new Looking(
        CompletableFuture.supplyAsync(() -> Findings.in(scene, new OnlyCancelled(progress))));
  }

  /**
   * What was found, once it is.
   *
   * @throws CancellationException when it was called off
   */
  Findings findings() {
    try {
      return findings.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof CancellationException calledOff) {
        throw calledOff;
      }
      throw e;
    }
  }

  /** Whether the whole is called off. */
  private record OnlyCancelled(Progress whole) implements Progress {

    @Override
    public void at(String stage, double share) {
      // What is heard comes from the estimate.
    }

    @Override
    public boolean cancelled() {
      return whole.cancelled();
    }
  }
}
