package org.rimebook.desk.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;

/** Light or dark, or as the system has it. */
public enum Theme {
  LIGHT("light"),
  DARK("dark"),
  SYSTEM("as the system");

  private final String words;

  Theme(String words) {
    this.words = words;
  }

  /** Its name on screen and where it is remembered. */
  public String words() {
    return words;
  }

  /** To be called once, before the first component is made. */
  public static void install(Theme first) {
    Typeface.offer();
    FlatLaf.registerCustomDefaultsSource("org.rimebook.desk.look");
    first.apply();
  }

  /** Puts it in force, in all windows there are. */
  public void apply() {
    if (this == DARK || this == SYSTEM && SystemTheme.isDark()) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
  }
}
