package org.rimebook.export.figure;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;

/**
 * The type of report and figures: Roboto, whose figures are all of one width. Inter, the type of
 * the window, comes as OpenType with PostScript outlines, which can't be embedded in part.
 */
public enum Typeface {
  REGULAR("Roboto-Regular.ttf"),
  MEDIUM("Roboto-Medium.ttf");

  private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
  private static final Map<Typeface, Font> DRAWN = new EnumMap<>(Typeface.class);

  private final String file;

  Typeface(String file) {
    this.file = file;
  }

  /** The bytes of its file. */
  public byte[] bytes() {
    try (InputStream in = Typeface.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException(file + " isn't among the program's own files");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own files can't be read", e);
    }
  }

  /** For drawing, in a size [pt]. */
  public Font font(double sizePt) {
    synchronized (DRAWN) {
      return DRAWN.computeIfAbsent(this, Typeface::made).deriveFont((float) sizePt);
    }
  }

  private static Font made(Typeface face) {
    try {
      return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes()));
    } catch (FontFormatException | IOException e) {
      throw new IllegalStateException(face.file + " isn't a TrueType font", e);
    }
  }

  /** The typeface a font for drawing was made of. */
  static Typeface of(Font font) {
    return font.getFontName(java.util.Locale.ROOT).contains("Medium") ? MEDIUM : REGULAR;
  }
}
