package org.rimebook.desk;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Notes every event that kept the event thread at work longer than a limit. Processor time is
 * counted, so that what else the machine does meanwhile isn't; a handler that waits for something
 * is found by the clock, with ten times the limit.
 */
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
    long before = workedMs();
    super.dispatchEvent(event);
    long worked = workedMs() - before;
    long took = (System.nanoTime() - start) / 1_000_000;
    if (worked > limitMs || took > 10 * limitMs) {
      slow.add(worked + " ms at work, " + took + " ms by the clock: " + event);
    }
  }

  private static long workedMs() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1_000_000;
  }

  @Override
  public void close() {
    pop();
  }
}
