package org.rimebook.desk.model.bench;

/**
 * What is chosen of a few things.
 *
 * @param <T> the things
 */
final class Chosen<T> {

  private final Runnable changed;
  private T now;

  /**
   * @param first what is chosen at first
   * @param changed run after each change
   */
  Chosen(T first, Runnable changed) {
    this.now = first;
    this.changed = changed;
  }

  T get() {
    return now;
  }

  void set(T other) {
    if (!now.equals(other)) {
      now = other;
      changed.run();
    }
  }
}
