package org.rimebook.season;

import java.util.concurrent.CancellationException;

/** Told how far long work is; may end it. */
@FunctionalInterface
public interface Progress {

  /** Nobody wants to know, and nobody cancels. */
  Progress NONE = (stage, share) -> {};

  /**
   * Tells how far the work is.
   *
   * @param stage what is being done, in words
   * @param share how much of all is done, 0 to 1
   * @throws CancellationException when the work is to end
   */
  void at(String stage, double share);
}
