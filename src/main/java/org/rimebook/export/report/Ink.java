package org.rimebook.export.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;
import org.rimebook.export.figure.Glyphs;
import org.rimebook.export.figure.PdfType;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.export.figure.Typeface;

/** Writes onto one page at a time; measures and breaks text. Everything goes to memory. */
final class Ink {

  private static final double UNITS = 1000;

  private final PDDocument document;
  private final PdfType type;
  private final Map<Letter, Float> widths = new HashMap<>();
  private PDPageContentStream content;

  private record Letter(Typeface face, char letter) {}

  Ink(PDDocument document) {
    this.document = document;
    try {
      this.type = new PdfType(document);
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private static UncheckedIOException impossible(IOException e) {
    return new UncheckedIOException("writing to memory can't fail", e);
  }

  /** Goes on at the end of a page; the page before is left. */
  void on(PDPage page) {
    close();
    try {
      content = new PDPageContentStream(document, page, AppendMode.APPEND, false, true);
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Leaves the page. */
  void close() {
    try {
      if (content != null) {
        content.close();
        content = null;
      }
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Begins content that belongs to an element of the structure. */
  void begin(String tag, int mark) {
    try {
      content.beginMarkedContent(COSName.getPDFName(tag), mark);
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Begins content that is only decoration. */
  void beginArtifact() {
    try {
      content.beginMarkedContent(COSName.ARTIFACT);
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Ends what was begun last. */
  void end() {
    try {
      content.endMarkedContent();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Writes one line of text that the type can show. */
  void text(Style style, double x, double baseline, String words) {
    if (words.isBlank()) {
      return;
    }
    try {
      content.beginText();
      content.setFont(type.font(style.face()), (float) style.sizePt());
      content.newLineAtOffset((float) x, (float) baseline);
      content.showText(words);
      content.endText();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Draws a level line, as decoration. */
  void rule(double x, double y, double width, double weight) {
    try {
      beginArtifact();
      content.setLineWidth((float) weight);
      content.moveTo((float) x, (float) y);
      content.lineTo((float) (x + width), (float) y);
      content.stroke();
      end();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Draws a figure with its lower left corner at a point. */
  void figure(SeasonFigure figure, double x, double y) {
    try {
      PDFormXObject form = type.form(figure);
      content.saveGraphicsState();
      content.transform(Matrix.getTranslateInstance((float) x, (float) y));
      content.drawForm(form);
      content.restoreGraphicsState();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Width of a text the type can show [pt]. */
  double width(Style style, String words) {
    float width = 0;
    for (int i = 0; i < words.length(); i++) {
      width += widths.computeIfAbsent(new Letter(style.face(), words.charAt(i)), this::measured);
    }
    return width / UNITS * style.sizePt();
  }

  private float measured(Letter letter) {
    try {
      return type.font(letter.face).getStringWidth(String.valueOf(letter.letter));
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /**
   * A text as lines that fit a width; a word that is wider is broken. Characters the type lacks are
   * replaced.
   */
  List<String> lines(Style style, String words, double widthPt) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Glyphs.visible(words).strip().split(" +")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(style, longer) <= widthPt) {
        line.setLength(0);
        line.append(longer);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(rest(style, word, widthPt, lines));
    }
    lines.add(line.toString());
    return lines;
  }

  /** Adds the whole lines of a word that is too wide, and gives what is left of it. */
  private String rest(Style style, String word, double widthPt, List<String> lines) {
    String left = word;
    while (width(style, left) > widthPt) {
      int fits = Math.max(1, fitting(style, left, widthPt));
      lines.add(left.substring(0, fits));
      left = left.substring(fits);
    }
    return left;
  }

  private int fitting(Style style, String word, double widthPt) {
    double width = 0;
    for (int i = 0; i < word.length(); i++) {
      width += width(style, word.substring(i, i + 1));
      if (width > widthPt) {
        return i;
      }
    }
    return word.length();
  }
}
