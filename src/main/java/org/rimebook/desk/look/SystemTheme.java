package org.rimebook.desk.look;

import java.awt.Color;
import java.awt.SystemColor;
import java.awt.Toolkit;
import java.util.Locale;

/** Whether the system shows dark windows. */
final class SystemTheme {

  private SystemTheme() {}

  /** By the name of the desktop's theme where it tells one, else by its window colour. */
  static boolean isDark() {
    Object name = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Net/ThemeName");
    if (name instanceof String text) {
      return text.toLowerCase(Locale.ROOT).contains("dark");
    }
    Color window = SystemColor.window;
    return window.getRed() + window.getGreen() + window.getBlue() < 3 * 96;
  }
}
