package org.rimebook.findings;

import java.util.Optional;
import java.util.function.Supplier;

/** A value made when first asked for. */
final class Once<T> {

  private final Supplier<T> maker;
  private Optional<T> value = Optional.empty();

  Once(Supplier<T> maker) {
    this.maker = maker;
  }

  synchronized T get() {
    if (value.isEmpty()) {
      value = Optional.of(maker.get());
    }
    return value.get();
  }
}
