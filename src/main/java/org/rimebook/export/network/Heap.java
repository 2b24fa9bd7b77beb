package org.rimebook.export.network;

import java.util.concurrent.Semaphore;
import org.rimebook.record.RecordSize;

/**
 * Lets seasons begin only while what they need together fits into memory, first come, first served.
 * A season that needs more than there is runs alone.
 */
final class Heap {

  private static final long MIB = 1 << 20;

  /** What one season needs whatever its size [MiB] (own measurement, with half in reserve). */
  private static final long LEAST_MIB = 64;

  /** What it needs for each byte of its record's text (own measurement, with half in reserve). */
  private static final long PER_TEXT_BYTE = 12;

  private final int total;
  private final Semaphore free;

  /**
   * @param bytes memory all seasons may take together
   */
  Heap(long bytes) {
    total = (int) Math.max(1, Math.min(Integer.MAX_VALUE, bytes / MIB));
    free = new Semaphore(total, true);
  }

  /** What a season may need [MiB], at most all there is. */
  int needMiB(RecordSize size) {
    long need = LEAST_MIB + size.textBytes() * PER_TEXT_BYTE / MIB;
    return (int) Math.min(total, need);
  }

  /** Waits until that much is free and takes it. */
  void take(int miB) throws InterruptedException {
    free.acquire(miB);
  }

  /** Gives it back. */
  void giveBack(int miB) {
    free.release(miB);
  }
}
