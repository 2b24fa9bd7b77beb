package org.rimebook.desk.model;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/**
 * A value that can be watched. Watchers are told of a change on the thread that made it, in the
 * order they came, and not when the new value equals the old. Confined to one thread.
 *
 * @param <T> an immutable type
 */
public final class Watched<T> {

  private final List<Consumer<? super T>> watchers = new CopyOnWriteArrayList<>();
  private T value;

  /**
   * @param value the first value
   */
  public Watched(T value) {
    this.value = Objects.requireNonNull(value, "value");
  }

  /** The value now. */
  public T get() {
    return value;
  }

  /**
   * Changes the value and tells the watchers, unless it stays the same. Where a watcher changes it
   * again, the others are told the later value only, so that nobody is left with the earlier.
   */
  public void set(T changed) {
    Objects.requireNonNull(changed, "changed");
    if (changed.equals(value)) {
      return;
    }
    value = changed;
    for (Consumer<? super T> watcher : watchers) {
      if (value != changed) {
        return;
      }
      watcher.accept(changed);
    }
  }

  /** Tells a watcher of each change from now on, until what is returned is closed. */
  public Watch watch(Consumer<? super T> watcher) {
    watchers.add(watcher);
    return () -> watchers.remove(watcher);
  }

  /** Tells a watcher of the value now and of each change. */
  public Watch follow(Consumer<? super T> watcher) {
    watcher.accept(value);
    return watch(watcher);
  }

  /** Ends a watch when closed. */
  public interface Watch extends AutoCloseable {
    @Override
    void close();
  }
}
