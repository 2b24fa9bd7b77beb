package org.rimebook.station;

import java.util.concurrent.CancellationException;

/**
 * Hears how far long work has come, and may call it off. Calls come from the thread that works, and
 * where wires are worked on side by side from several at once.
 */
public interface Progress {

  /** Nobody listens and nothing is called off. */
  Progress NONE =
      new Progress() {
        @Override
        public void at(String stage, double share) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  /**
   * Hears what is being done.
   *
   * @param stage what is being done, in words
   * @param share how much of the whole work is done, 0 to 1; it may stand still or jump
   */
  void at(String stage, double share);

  /** Whether the work is to stop. */
  boolean cancelled();

  /**
   * Tells what is being done, unless the work has been called off.
   *
   * @throws CancellationException when it has
   */
  default void step(String stage, double share) {
    if (cancelled()) {
      throw new CancellationException(stage);
    }
    at(stage, share);
  }

  /**
   * The progress of a part of the work, from one share of the whole to another.
   *
   * @param from share of the whole that is done when the part starts
   * @param to share of the whole that is done when it ends
   */
  default Progress part(double from, double to) {
    Progress whole = this;
    return new Progress() {
      @Override
      public void at(String stage, double share) {
        whole.at(stage, from + share * (to - from));
      }

      @Override
      public boolean cancelled() {
        return whole.cancelled();
      }
    };
  }
}
