package org.rimebook.desk;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** Moves the mouse, presses keys and looks at the screen, as whoever sits before the window. */
final class Person {

  private static final Path SCREENS = Path.of("target", "screens");
  private static final long PATIENCE_MS = 30_000;
  private static final int REACHING_MS = 80;

  private final Robot robot;

  Person() {
    try {
      robot = new Robot();
    } catch (AWTException e) {
      throw new IllegalStateException(e);
    }
    robot.setAutoDelay(5);
  }

  /** Reads something off the window, on its own thread. */
  static <T> T see(Supplier<T> look) {
    AtomicReference<T> seen = new AtomicReference<>();
    try {
      SwingUtilities.invokeAndWait(() -> seen.set(look.get()));
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return seen.get();
  }

  /** Waits until something is to be seen. */
  void waitFor(String what, BooleanSupplier seen) {
    long giveUp = System.nanoTime() + PATIENCE_MS * 1_000_000;
    while (!see(seen::getAsBoolean)) {
      if (System.nanoTime() > giveUp) {
        picture("gave-up");
        throw new AssertionError("waited in vain for: " + what);
      }
      robot.delay(10);
    }
    settle();
  }

  /**
   * Lets what was done reach the window and its handling end. The robot's own wait for idleness
   * takes most of a second each time.
   */
  void settle() {
    robot.delay(REACHING_MS);
    see(() -> null);
    see(() -> null);
  }

  void press(String stroke) {
    KeyStroke key = KeyStroke.getKeyStroke(stroke);
    int modifiers = key.getModifiers();
    hold(modifiers, true);
    robot.keyPress(key.getKeyCode());
    robot.keyRelease(key.getKeyCode());
    hold(modifiers, false);
    settle();
  }

  private void hold(int modifiers, boolean down) {
    modifier(modifiers, InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_CONTROL, down);
    modifier(modifiers, InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_SHIFT, down);
    modifier(modifiers, InputEvent.ALT_DOWN_MASK, KeyEvent.VK_ALT, down);
  }

  private void modifier(int modifiers, int mask, int key, boolean down) {
    if ((modifiers & mask) == 0) {
      return;
    }
    if (down) {
      robot.keyPress(key);
    } else {
      robot.keyRelease(key);
    }
  }

  /** Types letters, digits, spaces and points. */
  void type(String text) {
    for (char character : text.toCharArray()) {
      int key = KeyEvent.getExtendedKeyCodeForChar(character);
      boolean upper = Character.isUpperCase(character);
      if (upper) {
        robot.keyPress(KeyEvent.VK_SHIFT);
      }
      robot.keyPress(key);
      robot.keyRelease(key);
      if (upper) {
        robot.keyRelease(KeyEvent.VK_SHIFT);
      }
    }
    settle();
  }

  void move(Component component, int x, int y) {
    point(component, x, y);
    settle();
  }

  private void point(Component component, int x, int y) {
    Point corner = see(component::getLocationOnScreen);
    robot.mouseMove(corner.x + x, corner.y + y);
  }

  void click(Component component, int x, int y) {
    move(component, x, y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    settle();
  }

  void doubleClick(Component component, int x, int y) {
    move(component, x, y);
    for (int click = 0; click < 2; click++) {
      robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
      robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }
    settle();
  }

  void click(Component component) {
    click(component, see(component::getWidth) / 2, see(component::getHeight) / 2);
  }

  void wheel(Component component, Point at, int notches) {
    move(component, at.x, at.y);
    robot.mouseWheel(notches);
    settle();
  }

  /** Drags with the left button through places of the component; releases at the last. */
  void drag(Component component, Point... through) {
    dragHeld(component, through);
    release();
  }

  /** Drags and keeps the button down. */
  void dragHeld(Component component, Point... through) {
    move(component, through[0].x, through[0].y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    for (int i = 1; i < through.length; i++) {
      glide(component, through[i - 1], through[i]);
    }
    settle();
  }

  void release() {
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    settle();
  }

  private void glide(Component component, Point from, Point to) {
    int steps = 12;
    for (int step = 1; step <= steps; step++) {
      point(
          component,
          from.x + (to.x - from.x) * step / steps,
          from.y + (to.y - from.y) * step / steps);
    }
  }

  /** Writes what is on the screen to target/screens. */
  void picture(String name) {
    settle();
    Rectangle whole = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
    write(robot.createScreenCapture(whole), name);
  }

  /** Writes what a window shows to target/screens. */
  void picture(Component window, String name) {
    settle();
    write(robot.createScreenCapture(see(window::getBounds)), name);
  }

  private static void write(BufferedImage image, String name) {
    try {
      Files.createDirectories(SCREENS);
      ImageIO.write(image, "png", SCREENS.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
