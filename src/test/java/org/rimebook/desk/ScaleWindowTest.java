package org.rimebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.Drawer;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.bench.BenchTask;

/** The size of everything, changed while the real window is open. */
class ScaleWindowTest {

  private static final int STEPS_TO_TWICE = 4;
  private static final int LEAST_PARTS = 5000;

  @TempDir private Path folder;

  @AfterEach
  void everythingAtItsSizeAgain() {
    Person.see(
        () -> {
          UIScale.setZoomFactor(1);
          return null;
        });
  }

  @Test
  void aWindowMadeTwiceTheSizeHasTypeColoursAndSizesOfOneOpenedAtIt() throws IOException {
    Map<String, String> changed = sizes("changed", 100, STEPS_TO_TWICE);
    Map<String, String> opened = sizes("opened", 200, 0);
    // What is said of work under way differs by the moment it is looked at.
    changed.keySet().retainAll(opened.keySet());
    assertThat(changed).hasSizeGreaterThan(LEAST_PARTS);
    assertThat(changed.keySet())
        .filteredOn(part -> !changed.get(part).equals(opened.get(part)))
        .extracting(part -> part + ": " + changed.get(part) + " instead of " + opened.get(part))
        .isEmpty();
  }

  /** Goes through the window before a change of size, so that all of it is made, and after. */
  private Map<String, String> sizes(String name, int scalePct, int larger) throws IOException {
    Path own = Files.createDirectories(folder.resolve(name));
    Path memory = Files.createDirectories(own.resolve("memory"));
    Files.writeString(
        memory.resolve("desk.properties"),
        "format=rimebook-memory/1\nwindow.scale_pct=" + scalePct + "\n");
    Path season = Sitting.copy("hard-winter", own);
    Map<String, String> sizes = new TreeMap<>();
    try (Sitting sitting = Sitting.at(Optional.of(season), memory, 1920, 1080)) {
      sitting.waitUntilSettled();
      Person.see(
          () -> {
            sitting.workspace().notice().set(new Notice(Notice.Weight.FAULT, "It is cold."));
            return null;
          });
      walk(sitting, new TreeMap<>());
      for (int step = 0; step < larger; step++) {
        sitting.person.press("control EQUALS");
      }
      walk(sitting, sizes);
      sitting.person.press("control shift O");
      note(sitting, "start", sizes);
    }
    return sizes;
  }

  private static void walk(Sitting sitting, Map<String, String> sizes) {
    Rectangle plots = Person.see(sitting.stack()::plots);
    int y = plots.y + plots.height / 2;
    note(sitting, "nothing", sizes);
    sitting.person.press("control G");
    note(sitting, "date", sizes);
    sitting.person.press("ESCAPE");
    sitting.person.press("S");
    note(sitting, "strips", sizes);
    sitting.person.press("ESCAPE");
    sitting.person.drag(
        sitting.stack(), new Point(plots.x + 50, y), new Point(plots.x + plots.width / 2, y));
    note(sitting, "selected", sizes);
    sitting.person.press("B");
    sitting.waitForForeseen();
    note(sitting, "marking", sizes);
    sitting.person.press("ESCAPE");
    sitting.person.press("ESCAPE");
    sitting.waitUntilSettled();
    sitting.person.press("N");
    sitting.waitForForeseen();
    note(sitting, "finding", sizes);
    sitting.person.press("ESCAPE");
    sitting.waitUntilSettled();
    for (Drawer drawer : Drawer.values()) {
      Person.see(
          () -> {
            sitting.workspace().drawer().set(drawer);
            return null;
          });
      note(sitting, drawer.name(), sizes);
    }
    bench(sitting, sizes);
  }

  private static void bench(Sitting sitting, Map<String, String> sizes) {
    sitting.person.press("control B");
    for (BenchTask task : BenchTask.values()) {
      Component list = Person.see(() -> Texts.named(sitting.frame(), "Tasks of the bench"));
      int each = Person.<Integer>see(list::getHeight) / BenchTask.values().length;
      sitting.person.click(list, 30, task.ordinal() * each + each / 2);
      note(sitting, task.name(), sizes);
    }
    sitting.person.press("control B");
  }

  private static void note(Sitting sitting, String state, Map<String, String> sizes) {
    sitting.person.settle();
    Person.see(
        () -> {
          note(sitting.frame().getRootPane(), state, sizes);
          return null;
        });
  }

  private static void note(Component part, String where, Map<String, String> sizes) {
    String own = where + ">" + part.getClass().getName().replaceFirst(".*[.]", "");
    Font font = part.getFont();
    String key = own + " " + text(part);
    int number = 1;
    while (sizes.containsKey(key + " " + number)) {
      number++;
    }
    String size = wraps(part) ? "" : " " + part.getPreferredSize();
    sizes.put(
        key + " " + number,
        font.getFontName(Locale.ROOT)
            + (" " + font.getStyle() + " " + font.getSize2D() + size)
            + (" in #" + Integer.toHexString(part.getForeground().getRGB())));
    // What a renderer shows last is by chance.
    if (part instanceof Container container && !(part instanceof CellRendererPane)) {
      for (Component child : container.getComponents()) {
        note(child, own, sizes);
      }
    }
  }

  /** Whether the size wanted depends on the room there is. */
  private static boolean wraps(Component part) {
    return !(part instanceof JLabel || part instanceof AbstractButton || part instanceof JTable);
  }

  private static String text(Component part) {
    if (part instanceof JLabel label) {
      return label.getText();
    }
    if (part instanceof AbstractButton button) {
      return button.getText();
    }
    return part instanceof JTextComponent words ? words.getText() : "";
  }
}
