package org.rimebook.export.figure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Set;
import java.util.function.IntPredicate;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * What the type can show. A character it lacks is shown as {@value #LACKING}, so that it is seen
 * that something stands there.
 */
public final class Glyphs {

  /** Stands for a character that can't be shown; every typeface here has it. */
  public static final String LACKING = "\uFFFD";

  private static final char UNBROKEN = '\u00A0';
  private static final String UNBROKEN_TEXT = String.valueOf(UNBROKEN);
  private static final Set<Integer> SHOWN = shown();

  private Glyphs() {}

  private static Set<Integer> shown() {
    try (TrueTypeFont font =
        new TTFParser().parse(new RandomAccessReadBuffer(Typeface.REGULAR.bytes()))) {
      CmapLookup lookup = font.getUnicodeCmapLookup();
      Set<Integer> known = new HashSet<>();
      for (int c = ' '; c <= Character.MAX_VALUE; c++) {
        if (lookup.getGlyphId(c) > 0) {
          known.add(c);
        }
      }
      return known;
    } catch (IOException e) {
      throw new UncheckedIOException("the type of the report can't be read", e);
    }
  }

  /**
   * The text as it can be shown: blanks and line ends become a blank, marks without a width of
   * their own go, and what the type lacks is replaced.
   */
  public static String visible(String text) {
    if (text.chars().allMatch(plain())) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> shown.append(visible(c)));
    return shown.toString();
  }

  private static IntPredicate plain() {
    return c -> c >= ' ' && c < 0x7f;
  }

  private static String visible(int c) {
    if (c == UNBROKEN) {
      return UNBROKEN_TEXT;
    }
    if (c == '\n' || c == '\t' || c == '\r' || Character.isSpaceChar(c)) {
      return " ";
    }
    int kind = Character.getType(c);
    if (kind == Character.FORMAT && c != 0xAD) {
      return "";
    }
    return !Character.isISOControl(c) && SHOWN.contains(c) ? Character.toString(c) : LACKING;
  }
}
