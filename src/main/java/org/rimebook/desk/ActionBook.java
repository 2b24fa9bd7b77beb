package org.rimebook.desk;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRootPane;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;

/** All actions of the window: its menus, its keys and what the list of keys shows. */
final class ActionBook {

  private final List<DeskAction> actions = new ArrayList<>();

  void add(List<DeskAction> more) {
    for (DeskAction action : more) {
      actions.stream()
          .filter(other -> action.key() != null && action.key().equals(other.key()))
          .forEach(other -> refuse(action, other));
      actions.add(action);
    }
  }

  private static void refuse(DeskAction action, DeskAction other) {
    throw new IllegalStateException(
        "\"" + action.name() + "\" and \"" + other.name() + "\" have the same key");
  }

  List<DeskAction> all() {
    return List.copyOf(actions);
  }

  List<DeskAction> of(Group group) {
    return actions.stream().filter(action -> action.group() == group).toList();
  }

  void refresh() {
    actions.forEach(DeskAction::refresh);
  }

  /** A menu bar of the groups; what is in them is filled in by {@link #fill}. */
  JMenuBar menus() {
    JMenuBar bar = new JMenuBar();
    for (Group group : Group.values()) {
      JMenu menu = new JMenu(group.words());
      menu.setMnemonic(group.mnemonic());
      menu.addMenuListener(new Refresher());
      bar.add(menu);
    }
    return bar;
  }

  /** Puts all actions into such a bar; states are looked at anew as a menu opens. */
  void fill(JMenuBar bar) {
    for (Group group : Group.values()) {
      JMenu menu = bar.getMenu(group.ordinal());
      menu.removeAll();
      of(group).forEach(action -> menu.add(new JMenuItem(action)));
    }
  }

  /** Keys work wherever the focus is in the window, even of actions whose menu isn't showing. */
  void bind(JRootPane root) {
    for (DeskAction action : actions) {
      if (action.key() != null) {
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(action.key(), action);
        root.getActionMap().put(action, action);
      }
    }
  }

  private final class Refresher implements MenuListener {
    @Override
    public void menuSelected(MenuEvent event) {
      refresh();
    }

    @Override
    public void menuDeselected(MenuEvent event) {
      // Nothing to do: states are looked at again when a menu opens.
    }

    @Override
    public void menuCanceled(MenuEvent event) {
      // As for deselecting.
    }
  }
}
