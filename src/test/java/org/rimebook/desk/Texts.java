package org.rimebook.desk;

import java.awt.Component;
import java.awt.Container;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;

/** The words that show in a window. */
final class Texts {

  private Texts() {}

  static String in(Container container) {
    StringBuilder words = new StringBuilder();
    collect(container, words);
    return words.toString();
  }

  /** The button with some words that shows in a window. */
  static AbstractButton button(Container container, String words) {
    return Stream.of(container.getComponents())
        .filter(Component::isShowing)
        .flatMap(Texts::withinAndItself)
        .filter(AbstractButton.class::isInstance)
        .map(AbstractButton.class::cast)
        .filter(button -> words.equals(button.getText()))
        .findFirst()
        .orElseThrow();
  }

  /** The component with an accessible name that shows in a window. */
  static Component named(Container container, String name) {
    return Stream.of(container.getComponents())
        .filter(Component::isShowing)
        .flatMap(Texts::withinAndItself)
        .filter(part -> !(part instanceof JLabel) && name.equals(name(part)))
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing here is named " + name));
  }

  /** Whether something shows in a window whose accessible name begins so. */
  static boolean shows(Container container, String beginning) {
    return Stream.of(container.getComponents())
        .filter(Component::isShowing)
        .flatMap(Texts::withinAndItself)
        .anyMatch(part -> name(part).startsWith(beginning));
  }

  private static String name(Component part) {
    String name =
        part.getAccessibleContext() == null
            ? null
            : part.getAccessibleContext().getAccessibleName();
    return name == null ? "" : name;
  }

  private static Stream<Component> withinAndItself(Component part) {
    Stream<Component> within =
        part instanceof Container container
            ? Stream.of(container.getComponents()).flatMap(Texts::withinAndItself)
            : Stream.empty();
    return Stream.concat(Stream.of(part), within).filter(Component::isShowing);
  }

  private static void collect(Component component, StringBuilder words) {
    if (!component.isShowing()) {
      return;
    }
    if (component instanceof JLabel label) {
      words.append(label.getText()).append('\n');
    } else if (component instanceof AbstractButton button) {
      words.append(button.getText()).append('\n');
    } else if (component instanceof JTextComponent text) {
      words.append(text.getText()).append('\n');
    }
    if (component instanceof Container container) {
      for (Component child : container.getComponents()) {
        collect(child, words);
      }
    }
  }
}
