package org.rimebook.desk.look;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;

/** The typeface of the window, in the two weights it is set in. */
public final class Typeface {

  private Typeface() {}

  /** Whoever asks second waits until the first has it. */
  private static final class Once {
    static {
      FlatInterFont.installStyle(FlatInterFont.STYLE_REGULAR);
      FlatInterFont.installStyle(FlatInterFont.STYLE_BOLD);
    }

    private Once() {}

    static void loaded() {
      // That this class is there is what was asked for.
    }
  }

  /**
   * Loads it, once; from any thread. A theme that needs it waits; to be had sooner, it may be
   * loaded while the theme is being set up.
   */
  public static void load() {
    Once.loaded();
  }

  /** Has it loaded when a theme asks for it. */
  static void offer() {
    FontUtils.registerFontFamilyLoader(FlatInterFont.FAMILY, Typeface::load);
  }
}
