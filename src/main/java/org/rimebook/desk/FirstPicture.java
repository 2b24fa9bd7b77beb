package org.rimebook.desk;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import javax.swing.Timer;

/** Holds back what would take time from the first picture of a season until that is on screen. */
final class FirstPicture {

  private static final int LOOK_MS = 20;

  /** Looks after which nothing is held back any longer: the window may not be to be seen. */
  private static final int LOOKS = 250;

  private final BooleanSupplier drawn;

  /**
   * @param drawn whether the season that is open is on screen
   */
  FirstPicture(BooleanSupplier drawn) {
    this.drawn = drawn;
  }

  /** Runs something on the event thread once the picture is there, or won't be for long. */
  void then(Runnable work) {
    AtomicInteger looks = new AtomicInteger();
    Timer look = new Timer(LOOK_MS, null);
    look.addActionListener(
        event -> {
          if (drawn.getAsBoolean() || looks.incrementAndGet() > LOOKS) {
            look.stop();
            work.run();
          }
        });
    look.start();
  }
}
