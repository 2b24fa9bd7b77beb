package org.rimebook.export.figure;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** The type of one PDF document, embedded in part, and drawings in that type. */
public final class PdfType {

  private final PDDocument document;
  private final Map<Typeface, PDType0Font> fonts = new EnumMap<>(Typeface.class);

  /**
   * Loads the type for a document.
   *
   * @param document the document
   * @throws IOException when the program's own files can't be read
   */
  public PdfType(PDDocument document) throws IOException {
    this.document = document;
    for (Typeface face : Typeface.values()) {
      TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(face.bytes()));
      // Ligatures would have no character to be read back as.
      file.setEnableGsub(false);
      fonts.put(face, PDType0Font.load(document, file, true));
    }
  }

  /** A typeface in this document. */
  public PDType0Font font(Typeface face) {
    return fonts.get(face);
  }

  /**
   * A drawing as a form of the document: lines and words, no pixels.
   *
   * @param figure the drawing
   * @throws IOException when it can't be put into the document
   */
  public PDFormXObject form(SeasonFigure figure) throws IOException {
    PdfBoxGraphics2D g =
        new PdfBoxGraphics2D(document, (float) figure.widthPt(), (float) figure.heightPt());
    g.setFontTextDrawer(new Drawer());
    figure.draw(g);
    g.dispose();
    return g.getXFormObject();
  }

  private final class Drawer extends PdfBoxGraphics2DFontTextDrawer {
    @Override
    protected boolean hasDynamicFontMapping() {
      return true;
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
      return fonts.get(Typeface.of(font));
    }
  }
}
