package org.rimebook.desk.form;

import java.awt.Component;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/**
 * A choice among a few things, shown by their words.
 *
 * @param <T> the things
 */
public final class Choice<T> extends JComboBox<T> {

  private static final long serialVersionUID = 1L;

  /**
   * @param name its name for screen readers
   * @param things the things to choose from
   * @param words what each is called on screen
   * @param chosen told what a person chooses
   */
  public Choice(String name, List<T> things, Function<T, String> words, Consumer<T> chosen) {
    things.forEach(this::addItem);
    getAccessibleContext().setAccessibleName(name);
    setRenderer(new Called<>(words));
    setMaximumRowCount(12);
    addActionListener(
        event -> {
          int index = getSelectedIndex();
          if (index >= 0) {
            chosen.accept(getItemAt(index));
          }
        });
  }

  private static final class Called<T> extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;
    private final transient Function<T, String> words;

    Called(Function<T, String> words) {
      this.words = words;
    }

    @Override
    @SuppressWarnings("unchecked")
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String text = value == null ? "" : words.apply((T) value);
      return super.getListCellRendererComponent(list, text, index, selected, focused);
    }
  }
}
