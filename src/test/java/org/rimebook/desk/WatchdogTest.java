package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Long work never holds the window up. */
class WatchdogTest {

  private static final long LIMIT_MS = 100;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"quiet-valley", "windy-ridge", "hard-winter"})
  void noEventKeepsTheEventThreadLongerThanATenthOfASecond(String sample) throws IOException {
    Path season = Sitting.copy(sample, folder);
    List<String> slow;
    try (Sitting sitting = Sitting.with(season, folder.resolve("memory"))) {
      // The first time round, classes are loaded and compiled.
      work(sitting);
      try (Watchdog dog = Watchdog.watch(LIMIT_MS)) {
        work(sitting);
        slow = dog.slow();
      }
    }
    assertThat(slow).isEmpty();
  }

  private static void work(Sitting sitting) {
    Rectangle plots = Person.see(sitting.stack()::plots);
    Point middle = new Point((int) plots.getCenterX(), (int) plots.getCenterY());
    sitting.person.press("3");
    sitting.person.wheel(sitting.stack(), middle, -5);
    sitting.person.press("LEFT");
    sitting.person.press("control T");
    sitting.person.press("control D");
    sitting.person.press("control D");
    Rectangle now = Person.see(sitting.stack()::plots);
    int y = (int) now.getCenterY();
    sitting.person.drag(
        sitting.stack(), new Point(now.x + now.width / 4, y), new Point(now.x + now.width / 2, y));
    sitting.person.press("D");
    sitting.waitForForeseen();
    sitting.person.press("ESCAPE");
    sitting.waitUntilSettled();
    sitting.person.press("C");
    sitting.person.press("C");
    sitting.person.press("C");
    walk(sitting);
  }

  /** Where anything was found. */
  private static void walk(Sitting sitting) {
    boolean any = Person.see(() -> !sitting.workspace().findings().get().open().isEmpty());
    if (any) {
      sitting.person.press("N");
      sitting.person.press("N");
      sitting.waitForForeseen();
      sitting.person.press("M");
      sitting.person.press("ESCAPE");
      sitting.person.press("ESCAPE");
      sitting.waitUntilSettled();
    }
  }
}
