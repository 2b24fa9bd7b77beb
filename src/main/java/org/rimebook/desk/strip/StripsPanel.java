package org.rimebook.desk.strip;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.StripSetting;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.model.Workspace;

/** Chooses which strips are shown, in what order, and whether their axes fit what is in view. */
final class StripsPanel extends InPlace {

  private final transient Workspace workspace;

  StripsPanel(Workspace workspace, StripStack stack) {
    super(stack, "[grow]16[][][]");
    this.workspace = workspace;
    getAccessibleContext().setAccessibleName("Strips");
    workspace.strips().watch(settings -> fill());
    stack.addContentListener(this::fill);
  }

  @Override
  void begin() {
    fill();
    focus("shown " + settings().get(0).kind().code());
  }

  private List<StripSetting> settings() {
    return workspace.strips().get().stream().filter(s -> stack().strips().has(s.kind())).toList();
  }

  private void fill() {
    if (!isVisible()) {
      return;
    }
    String focused = focusedName();
    removeAll();
    List<StripSetting> settings = settings();
    for (int i = 0; i < settings.size(); i++) {
      row(settings.get(i), i > 0, i + 1 < settings.size());
    }
    String keys = "Alt+Up and Alt+Down move the strip in focus.";
    add(Words.label(keys, () -> Look.text(0.92), Look::muted), "span");
    stack().revalidate();
    stack().repaint();
    focus(focused);
  }

  private void row(StripSetting setting, boolean canRise, boolean canSink) {
    Kind kind = setting.kind();
    JCheckBox shown = new JCheckBox(kind.words(), setting.shown());
    shown.addActionListener(e -> stack().strips().change(setting.shown(shown.isSelected())));
    JCheckBox fits = new JCheckBox("Axis fits the view", setting.fits());
    fits.getAccessibleContext().setAccessibleName(kind.words() + ": axis fits the view");
    fits.addActionListener(e -> stack().strips().change(setting.fitting(fits.isSelected())));
    add(named(shown, "shown", kind));
    add(named(fits, "fits", kind));
    add(named(button("Up", kind, -1, canRise), "up", kind));
    add(named(button("Down", kind, 1, canSink), "down", kind), "wrap");
    for (JComponent part : List.of(shown, fits)) {
      key(part, "alt UP", move(kind, -1));
      key(part, "alt DOWN", move(kind, 1));
    }
  }

  private JButton button(String words, Kind kind, int by, boolean possible) {
    JButton button = new JButton(words);
    button.getAccessibleContext().setAccessibleName(words + ": " + kind.words());
    button.addActionListener(move(kind, by));
    button.setEnabled(possible);
    return button;
  }

  private static <C extends JComponent> C named(C part, String what, Kind kind) {
    part.setName(what + " " + kind.code());
    part.setOpaque(false);
    return part;
  }

  private static void key(JComponent part, String stroke, Action deed) {
    part.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
    part.getActionMap().put(stroke, deed);
  }

  private Action move(Kind kind, int by) {
    return new AbstractAction() {
      @Override
      public void actionPerformed(ActionEvent event) {
        moved(kind, by);
      }
    };
  }

  /** Swaps a strip with the next in some direction that the season has. */
  private void moved(Kind kind, int by) {
    List<Kind> there = settings().stream().map(StripSetting::kind).toList();
    int to = there.indexOf(kind) + by;
    if (to < 0 || to >= there.size()) {
      return;
    }
    List<StripSetting> all = new ArrayList<>(workspace.strips().get());
    List<Kind> kinds = all.stream().map(StripSetting::kind).toList();
    Collections.swap(all, kinds.indexOf(kind), kinds.indexOf(there.get(to)));
    workspace.strips().set(List.copyOf(all));
  }

  private String focusedName() {
    for (Component part : getComponents()) {
      if (part.isFocusOwner()) {
        return part.getName();
      }
    }
    return "";
  }

  private void focus(String name) {
    for (Component part : getComponents()) {
      if (name.equals(part.getName())) {
        part.requestFocusInWindow();
      }
    }
  }
}
