package org.rimebook.record;

import org.rimebook.station.Progress;

/** Progress of work whose parts are done side by side, all of one size. Safe for threads. */
final class SharedProgress {

  private final Progress whole;
  private final double[] shares;

  /**
   * @param whole hears how much of all parts is done
   * @param parts how many there are
   */
  SharedProgress(Progress whole, int parts) {
    this.whole = whole;
    this.shares = new double[parts];
  }

  /** Progress of one part. */
  Progress part(int part) {
    return new Progress() {
      @Override
      public void at(String stage, double share) {
        whole.at(stage, reached(part, share));
      }

      @Override
      public boolean cancelled() {
        return whole.cancelled();
      }
    };
  }

  private synchronized double reached(int part, double share) {
    shares[part] = share;
    double sum = 0;
    for (double done : shares) {
      sum += done;
    }
    return sum / shares.length;
  }
}
