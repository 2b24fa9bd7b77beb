package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WatchedTest {

  private final Watched<String> watched = new Watched<>("first");
  private final List<String> told = new ArrayList<>();

  @Test
  void aWatcherIsToldOfChangesUntilItIsClosed() {
    Watched.Watch watch = watched.watch(told::add);
    watched.set("second");
    watched.set("second");
    watch.close();
    watched.set("third");
    assertThat(told).containsExactly("second");
  }

  @Test
  void nobodyIsLeftWithAnEarlierValueWhenAWatcherChangesItAgain() {
    watched.watch(
        now -> {
          if (now.equals("second")) {
            watched.set("third");
          }
        });
    watched.follow(told::add);
    watched.set("second");
    assertThat(told).containsExactly("first", "third");
  }
}
