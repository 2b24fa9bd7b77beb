package org.rimebook.desk;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Notes every event whose handling kept the event thread longer than a limit. */
final class Watchdog extends EventQueue implements AutoCloseable {

  private final long limitMs;
  private final List<String> slow = new CopyOnWriteArrayList<>();

  private Watchdog(long limitMs) {
    this.limitMs = limitMs;
  }

  static Watchdog watch(long limitMs) {
    Watchdog dog = new Watchdog(limitMs);
    Toolkit.getDefaultToolkit().getSystemEventQueue().push(dog);
    return dog;
  }

  /** The events that took too long, with their time. */
  List<String> slow() {
    return slow;
  }

  @Override
  protected void dispatchEvent(AWTEvent event) {
    long start = System.nanoTime();
    super.dispatchEvent(event);
    long tookMs = (System.nanoTime() - start) / 1_000_000;
    if (tookMs > limitMs) {
      slow.add(tookMs + " ms: " + event);
    }
  }

  @Override
  public void close() {
    pop();
  }
}
