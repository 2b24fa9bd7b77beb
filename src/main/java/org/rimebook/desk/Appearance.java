package org.rimebook.desk;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.Memory;

/** Theme and size of everything, as chosen and remembered. */
final class Appearance {

  private static final float[] SIZES = {1, 1.25f, 1.5f, 1.75f, 2, 2.25f, 2.5f};

  private final Memory memory;

  Appearance(Memory memory) {
    this.memory = memory;
  }

  /** To be called before the first component is made. */
  void install() {
    Theme.install(
        Arrays.stream(Theme.values())
            .filter(theme -> theme.words().equals(memory.window().theme()))
            .findFirst()
            .orElse(Theme.SYSTEM));
    UIScale.setSupportedZoomFactors(SIZES);
    if (memory.window().scalePct() > 0) {
      scale(memory.window().scalePct() / 100f);
    }
  }

  List<DeskAction> actions() {
    List<DeskAction> all = new ArrayList<>();
    all.add(
        DeskAction.named(Group.VIEW, "Everything larger", () -> step(1))
            .key("control EQUALS")
            .mnemonic('V')
            .done());
    all.add(
        DeskAction.named(Group.VIEW, "Everything smaller", () -> step(-1))
            .key("control MINUS")
            .mnemonic('M')
            .done());
    all.add(
        DeskAction.named(Group.VIEW, "Everything at 100 %", () -> choose(1))
            .key("control 0")
            .mnemonic('1')
            .done());
    for (Theme theme : Theme.values()) {
      all.add(DeskAction.named(Group.VIEW, "Theme: " + theme.words(), () -> wear(theme)).done());
    }
    return all;
  }

  private void wear(Theme theme) {
    theme.apply();
    memory.window(memory.window().themed(theme.words()));
  }

  private void step(int by) {
    int now = 0;
    while (now + 1 < SIZES.length && SIZES[now] < UIScale.getZoomFactor() - 0.01f) {
      now++;
    }
    choose(SIZES[Math.max(0, Math.min(SIZES.length - 1, now + by))]);
  }

  private void choose(float factor) {
    scale(factor);
    memory.window(memory.window().scaled(Math.round(100 * factor)));
  }

  private static void scale(float factor) {
    if (UIScale.setZoomFactor(factor)) {
      FlatLaf.updateUI();
    }
  }
}
